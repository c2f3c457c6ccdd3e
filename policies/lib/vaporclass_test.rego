package lib.vaporclass_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.lib.vaporclass

test_bounds_belong_to_the_tighter_class[name] if {
	some name, case in {
		"foil": {"ng": 0, "class": "I"},
		"0.1 perm": {"ng": 5.72135, "class": "I"},
		"0.11 perm": {"ng": 6.3, "class": "II"},
		"1 perm": {"ng": 57.2135, "class": "II"},
		"60 ng": {"ng": 60, "class": "III"},
		"10 perm": {"ng": 572.135, "class": "III"},
		"11 perm": {"ng": 629, "class": "none"},
	}
	vaporclass.by_ng(case.ng) == case.class
}

test_figure_beats_traits if {
	product := desk.product("FM-1", 4, {"figures": {"vapor_ng": desk.figure(900, "16", "perm")}})
	item := object.union(desk.own(7, "FM-1"), {"keys": ["vapor-tight"]})
	vaporclass.of(item) == "none" with input as desk.document([], [product], [])
	vaporclass.of(item) == "I" with input as desk.document([], [], [])
}

test_usual_figures[family] if {
	some family, class in {
		"polyethylene-sheet": "I",
		"housewrap-polyolefin": "none",
		"mineral-wool": "",
		"rubberized-asphalt-membrane": "I",
		"no-such-family": "",
	}
	found := vaporclass.of(bench.item("touches", "x", family, "", [])) with input as desk.document([], [], [])
	found == class
}
