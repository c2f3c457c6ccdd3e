package sequence.waits_cut_test

import data.lib.desk_test as desk
import data.sequence.waits_cut

_at := {"sheet": "P", "row": 5, "cell": "L5"}

_hours(value, text) := object.union(desk.figure(value, text, "h"), {"at": _at})

_told(value, text) := object.union(desk.figure(value, text, "h"), {"at": {"sheet": "W", "row": 12, "cell": "R12"}})

_found(asked, more) := found if {
	product := desk.product("FA-1", 5, {"figures": asked})
	row := desk.row(12, "FA-1", object.union({"role": "membrane"}, more))
	found := waits_cut.findings with input as desk.document([row], [product], [])
}

_recoat := {"recoat_h": _hours(16, "16 h")}

test_second_coat if {
	_found(_recoat, {"figures": {"recoat_h": _told(2, "2 h")}}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "R12"],
		"message": "The second coat of FA-1 follows after 2 h; its data asks for 16 h",
		"related": [{"at": _at, "cells": ["L5"], "what": "16 h"}],
	}}
}

test_second_coat_in_time if {
	count(_found(_recoat, {"figures": {"recoat_h": _told(16, "16 h")}})) == 0
	count(_found(_recoat, {})) == 0
	count(_found({}, {"figures": {"recoat_h": _told(1, "1 h")}})) == 0
	unsound := object.union(_told(2, "2 h"), {"problem": "no unit"})
	count(_found(_recoat, {"figures": {"recoat_h": unsound}})) == 0
}

_backfill(days, remark) := {
	"texts": {"remark": remark},
	"spans": {"bare_days": {"min": days, "max": days, "last": days, "from": "2026-06-01", "to": "2026-06-02"}},
}

_wait := {"backfill_wait_h": _hours(48, "48 h")}

test_backfill[name] if {
	some name, case in {
		"the same day": [0, "backfilled by evening", 1],
		"the next day": [1, "backfill to grade", 1],
		"two days on": [2, "backfill to grade", 0],
		"nothing of fill": [0, "boards go on", 0],
		"held": [0, "boards on; no backfill before the test", 0],
	}
	count(_found(_wait, _backfill(case[0], case[1]))) == case[2]
}

_deck(days, place, remark, note) := found if {
	row := desk.row(12, "FA-1", {
		"role": "membrane",
		"place": place,
		"texts": {"remark": remark},
		"spans": {"bare_days": {"min": days, "max": days, "last": days, "from": "2026-06-01", "to": "2026-06-02"}},
	})
	doc := desk.document([row], [desk.product("FA-1", 5, {})], [])
	told := [{"text": note, "at": {"sheet": "N", "row": 3, "cell": "B3"}}]
	found := waits_cut.findings with input as object.union(doc, {"project": object.union(doc.project, {"notes": told})})
}

test_flood_test[name] if {
	asked := "Terraces: 24-hour flood test before the boards"
	some name, case in {
		"the same day": [0, "Roof terrace, level 4", "", asked, 1],
		"the next day": [1, "Roof terrace, level 4", "", asked, 0],
		"two days asked": [1, "Terrace 2", "", "Decks stand a 48 h water test, then cover", 1],
		"two days on": [2, "Terrace 2", "", "Decks stand a 48 h water test, then cover", 0],
		"a wall": [0, "Terrace wall", "", asked, 0],
		"tested otherwise": [0, "Terrace 2", "electronic leak detection", asked, 0],
		"no such note": [0, "Terrace 2", "", "Test each window for 2 hours", 0],
	}
	count(_deck(case[0], case[1], case[2], case[3])) == case[4]
}
