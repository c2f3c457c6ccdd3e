package vapor.two_barriers_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.two_barriers

_of_profile(layers, winter, result) := found if {
	found := two_barriers.findings with input as wall.document([wall.profile(layers, winter, result)], {})
}

_around := [wall.film, wall.batt, wall.sheet]

_item(slot, text, family, class) := object.union(bench.item(slot, text, family, class, []), {
	"line": "W!23",
	"at": {"sheet": "W", "row": 23, "cell": sprintf("%s23", [{"behind": "K", "touches": "G", "remark": "M"}[slot]])},
})

_film := _item("behind", "0.15 mm polyethylene", "polyethylene-sheet", "membrane")

_batt := _item("behind", "batt", "glass-fiber-insulation", "insulation")

_row(items, more) := found if {
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	row := object.union(desk.row(23, "R-01", {"items": items}), more)
	found := two_barriers.findings with input as desk.document([row], [tight, open], [])
}

test_row_in_full if {
	_row([desk.own(23, "R-01"), _batt, _film], {}) == {{
		"line": "W!23",
		"cells": ["C23", "K23"],
		"message": concat("", [
			"R-01 and 0.15 mm polyethylene close in the insulation between them, ",
			"which dries to neither side",
		]),
	}}
}

test_row_with_foil_outside if {
	foil := object.union(_item("touches", "foil-faced polyiso", "polyiso", "insulation"), {"keys": ["foil-faced"]})
	found := _row([desk.own(23, "V-1"), foil, _batt, _film], {})
	{f.cells | some f in found} == {["C23", "G23", "K23"]}
}

test_row_silent[name] if {
	slip := object.union(_film, {"clause": "20 mil polyethylene slip sheet between metal and lintel"})
	some name, case in {
		"open sheet": {"items": [desk.own(23, "V-1"), _batt, _film], "more": {}},
		"no insulation": {"items": [desk.own(23, "R-01"), _film], "more": {}},
		"empty studs": {
			"items": [desk.own(23, "R-01"), _batt, _film],
			"more": {"signals": [desk.said(23, "studs_empty", "behind")]},
		},
		"no film": {"items": [desk.own(23, "R-01"), _batt], "more": {}},
		"said to be left out": {
			"items": [desk.own(23, "R-01"), _batt, object.union(_film, {"polarity": "no"})],
			"more": {},
		},
		"slip sheet": {
			"items": [desk.own(23, "R-01"), object.union(slip, {"at": {"cell": "M23"}})],
			"more": {"signals": [desk.said(23, "studs_filled", "behind")]},
		},
		"struck": {"items": [desk.own(23, "R-01"), _batt, _film], "more": {"struck": true}},
	}
	count(_row(case.items, case.more)) == 0
}

test_profile_severity[name] if {
	needed := {"share": {"out_c": -5.2, "needed_outside_share": 0.4}}
	some name, case in {
		"cool winter": {"layers": _around, "winter": 3, "result": {}, "level": "warning"},
		"mild winter": {"layers": _around, "winter": 9, "result": {}, "level": "warning"},
		"place unknown": {"layers": _around, "winter": null, "result": {}, "level": "warning"},
		"kept warm": {
			"layers": array.concat(_around, [wall.wool]),
			"winter": wall.cold,
			"result": object.union(wall.shares([0.9, 0.9, 0.6, 0.6]), needed),
			"level": "note",
		},
	}
	desk.levels(_of_profile(case.layers, case.winter, case.result)) == {case.level}
}

test_profile_silent if {
	count(_of_profile(_around, wall.cold, {})) == 0 # another rule tells it
	count(_of_profile([wall.film, wall.batt, wall.open_sheet], 3, {})) == 0
}
