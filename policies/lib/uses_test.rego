package lib.uses_test

import data.lib.desk_test as desk
import data.lib.uses

test_uses_in_live_rows if {
	struck := desk.row(9, "FM-1", {"struck": true})
	doc := desk.document([desk.row(7, "FM-1", {}), desk.row(8, "FM-2", {}), struck], [desk.product("FM-1", 4, {})], [])
	found := uses.main({"id": "FM-1"}) with input as doc
	[u.line.id | some u in found] == ["W!7"]
}

test_related_rows_once if {
	twice := object.union(desk.row(7, "FM-1", {}), {"items": [desk.own(7, "FM-1"), desk.own(7, "FM-1")]})
	doc := desk.document([twice, desk.row(8, "FM-1", {})], [desk.product("FM-1", 4, {})], [])
	found := uses.related(uses.of({"id": "FM-1"}), 0) with input as doc
	[r.line | some r in found] == ["W!7", "W!8"]
}
