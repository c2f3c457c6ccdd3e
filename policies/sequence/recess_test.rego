package sequence.recess_test

import data.lib.desk_test as desk
import data.sequence.recess

_said(id, text, no) := {
	"id": id,
	"no": no,
	"text": text,
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_short := _said("held_back", "ends 3/4 in short", false)

_flush := _said("edge_flush", "stops flush", false)

_drip := _said("drip_edge", "drip edge", false)

_no_drip := _said("drip_edge", "no drip", true)

_back(mm, text) := {"held_back_mm": desk.figure(mm, text, "in")}

_found(signals, figures, more) := found if {
	row := desk.row(12, "FM-1", object.union(
		{
			"place": "through-wall at shelf angle",
			"texts": {"remark": "of the brick face"},
			"signals": signals,
			"figures": figures,
		},
		more,
	))
	found := recess.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found([_short, _no_drip], {}, {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"severity": "warning",
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) ends behind the face (\"ends 3/4 in short\"), ",
			"and no metal edge carries the water out",
		]),
	}}
}

test_too_far_back if {
	some f in _found([_said("held_back", "held back", false), _drip], _back(50.8, "2 in."), {})
	f.severity == "warning"
	endswith(f.message, "(\"held back\"), 2 in. back from it on a drip edge; about 1/2 in (13 mm) is usual")
}

test_at_the_limit if {
	count(_found([_short, _drip], _back(25.4, "1 in"), {})) == 0
	count(_found([_short, _drip], _back(28, "28 mm"), {})) == 1
}

test_questions if {
	desk.levels(_found([_flush, _no_drip], {}, {})) == {"note"}
	some f in _found([_flush], {}, {})
	contains(f.message, "ends flush with the face (\"stops flush\"): see that a metal drip edge carries the water out")
	f.severity == "note"
	desk.levels(_found([_short], {}, {})) == {"note"}
}

test_silent[name] if {
	some name, case in {
		"nothing told": {"signals": [], "figures": {}, "more": {}},
		"on a drip edge": {"signals": [_short, _drip], "figures": _back(12.7, "1/2 in"), "more": {}},
		"a drip edge named by its tag": {
			"signals": [_short],
			"figures": _back(12.7, "1/2 in"),
			"more": {"items": [
				desk.own(12, "FM-1"),
				object.union(desk.own(12, "DE-2"), {"id": "W!12/2", "slot": "edge", "name": "Drip edge, stainless steel"}),
			]},
		},
		"flush on a drip edge": {"signals": [_flush, _drip], "figures": {}, "more": {}},
		"no distance told": {"signals": [_short, _drip], "figures": {}, "more": {}},
		"short of something else": {
			"signals": [_short, _no_drip],
			"figures": {},
			"more": {"texts": {"remark": "of the window"}},
		},
		"no veneer": {
			"signals": [_short, _no_drip],
			"figures": {},
			"more": {"place": "parapet", "texts": {"remark": "of the face"}},
		},
		"struck": {"signals": [_short, _no_drip], "figures": {}, "more": {"struck": true}},
		"metal": {
			"signals": [_short, _no_drip],
			"figures": {},
			"more": {"items": [object.union(desk.own(12, "C-1"), {"keys": ["metal", "copper"]})]},
		},
	}
	count(_found(case.signals, case.figures, case.more)) == 0
}

_noted(signals, said) := found if {
	row := desk.row(12, "FM-1", {
		"place": "through-wall at shelf angle",
		"texts": {"remark": "of the brick face"},
		"signals": signals,
	})
	doc := object.union(desk.document([row], [], []), {"project": {"signals": said}})
	found := recess.findings with input as doc
}

# Where the notes ask for a drip edge, a sheet that is cut flush without one breaks them.
test_flush_against_the_notes if {
	asked := object.union(_drip, {"slot": "note"})
	some f in _noted([_flush, _no_drip], [asked])
	f.severity == "warning"
	endswith(f.message, "and no metal edge carries the water out, which the notes ask for")
	desk.levels(_noted([_flush], [asked])) == {"note"}
	desk.levels(_noted([_flush, _no_drip], [object.union(asked, {"no": true})])) == {"note"}
	_noted([_flush, _drip], [asked]) == set()
}
