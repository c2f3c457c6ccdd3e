package data.tag_unknown_test

import data.data.tag_unknown
import data.lib.bench_test as bench
import data.lib.desk_test as desk

_item(n, slot) := object.union(bench.item("touches", "FL-4", "", "", []), {
	"slot": slot,
	"unknown": true,
	"line": sprintf("W!%d", [n]),
	"at": {"sheet": "W", "row": n, "cell": sprintf("C%d", [n])},
})

_row(n, slot, more) := object.union(desk.row(n, "FL-1", {"items": [_item(n, slot)]}), more)

_known := [desk.product("FL-1", 8, {}), desk.product("FL-2", 9, {}), desk.product("AB-1", 4, {})]

_found(rows, products) := found if {
	found := tag_unknown.findings with input as desk.document(rows, products, [])
}

test_fires_in_full if {
	_found([_row(12, "remark", {}), _row(14, "material", {})], _known) == {{
		"line": "W!14",
		"cells": ["C14"],
		"severity": "error",
		"message": "FL-4 is not in the product data, which has FL-1, FL-2",
		"related": [{"line": "W!12", "cells": ["C12"], "what": "the same tag"}],
	}}
}

test_level_by_slot[slot] if {
	some slot, level in {
		"primer": "error",
		"sealant": "warning",
		"remark": "note",
		"touches": "warning",
		"right": "warning",
	}
	desk.levels(_found([_row(12, slot, {})], _known)) == {level}
}

test_silent[name] if {
	some name, case in {
		"no product data": {"rows": [_row(12, "material", {})], "products": []},
		"struck": {"rows": [_row(12, "material", {"struck": true})], "products": _known},
		"known": {"rows": [desk.row(12, "FL-1", {})], "products": _known},
		"words without a tag": {
			"rows": [_row(12, "material", {"items": [object.union(_item(12, "material"), {"tag": ""})]})],
			"products": _known,
		},
	}
	count(_found(case.rows, case.products)) == 0
}

# The name of a product beside its tag is no other tag.
test_name_of_a_product if {
	named := [desk.product("FL-1", 8, {"texts": {"alias": "FL-4"}})]
	count(_found([_row(12, "material", {})], named)) == 0
}

# What a list of walls or roofs gives the build-up of is known; a row without one explains no tag.
test_code_of_an_assembly[name] if {
	some name, case in {
		"type": {"more": {"texts": {"type": "FL-4", "layers": "metal deck / board / sheet"}}, "found": 0},
		"mark": {"more": {"mark": "FL-4", "texts": {"layers": "metal deck / board / sheet"}}, "found": 0},
		"another": {"more": {"mark": "FL-5", "texts": {"layers": "metal deck / board / sheet"}}, "found": 1},
		"no build-up": {"more": {"mark": "FL-4", "texts": {"layers": ""}}, "found": 1},
	}
	count(_found([_row(12, "touches", {}), desk.row(20, "FL-1", case.more)], _known)) == case.found
}

# The data names it beside another product, so it is no slip; a longer code is another tag.
test_named_in_the_data[name] if {
	some name, case in {
		"primer": {"text": "FL-4 (acrylic) on CMU", "severity": "note"},
		"of a pair": {"text": "FL-3 / FL-4", "severity": "note"},
		"longer code": {"text": "FL-44 on CMU, FL-4-B", "severity": "error"},
		"other": {"text": "none", "severity": "error"},
	}
	named := [desk.product("FL-1", 8, {"texts": {"primer": case.text}})]
	{f.severity | some f in _found([_row(12, "material", {})], named)} == {case.severity}
}

# A code that the row calls a wall type is no product, and another beside it is.
test_silent_for_a_wall_type if {
	row := _row(12, "remark", {"texts": {"remark": "FL-1 to line of wall type FL-4"}})
	count(_found([row], _known)) == 0
	count(_found([_row(12, "remark", {"texts": {"remark": "FL-4 to line of wall type FL-5"}})], _known)) == 1
}
