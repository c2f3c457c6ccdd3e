package vapor.open_outside_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.vapor.open_outside
import data.vapor.two_barriers

_note := desk.limit("vapor_ng", null, null, {
	"scope": "pavilion",
	"text": "Pavilion: everything outside the V22 sheet is vapor-open",
})

_board(more) := object.union(
	object.union(bench.item("touches", "2 in. polyiso, foil both faces", "polyiso", "insulation", ["foil-faced"]), {"at": {
		"sheet": "W",
		"row": 56,
		"cell": "G56",
	}}),
	more,
)

_doc(board, more, limits) := desk.document(
	[object.union(
		desk.row(56, "V22", {"place": "Pavilion, field S", "items": [desk.own(56, "V22"), board]}),
		more,
	)],
	[desk.product("V22", 5, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})],
	limits,
)

test_fires_in_full if {
	found := open_outside.findings with input as _doc(_board({}), {}, [_note])
	found == {{
		"line": "W!56",
		"cells": ["C56", "G56"],
		"message": concat("", [
			"2 in. polyiso, foil both faces outside of the vapor-open V22 is vapor-tight; ",
			"the notes ask for vapor-open there",
		]),
		"related": [{
			"at": _note.at,
			"cells": ["A3"],
			"what": "Pavilion: everything outside the V22 sheet is vapor-open",
		}],
	}}
}

_film(more) := object.union(
	object.union(bench.item("touches", "polyethylene", "polyethylene-sheet", "film", []), {
		"relation": "over",
		"side": "subject",
		"clause": "polyethylene over the rock wool",
		"at": {"sheet": "W", "row": 56, "cell": "G56"},
	}),
	more,
)

_wool := object.union(bench.item("touches", "rock wool", "mineral-wool", "insulation", []), {
	"side": "object",
	"clause": "polyethylene over the rock wool",
	"at": {"sheet": "W", "row": 56, "cell": "G56"},
})

test_film_over_the_insulation if {
	row := {"items": [desk.own(56, "V22"), _film({}), _wool]}
	count(open_outside.findings) == 1 with input as _doc(_board({}), row, [_note])
	taken_off := {"items": [desk.own(56, "V22"), _film({"polarity": "removed"}), _wool]}
	count(open_outside.findings) == 0 with input as _doc(_board({}), taken_off, [_note])
	inside := {"items": [desk.own(56, "V22"), _film({"relation": "", "side": ""}), _wool]}
	count(open_outside.findings) == 0 with input as _doc(_board({}), inside, [_note])
}

test_told_once if {
	filled := {"signals": [desk.said(56, "studs_filled", "remark"), desk.said(56, "vapor_closed_inside", "remark")]}
	count(two_barriers.findings) == 0 with input as _doc(_board({}), filled, [_note])
	count(two_barriers.findings) == 1 with input as _doc(_board({}), filled, [])
}

test_silent[name] if {
	wool := {"keys": ["mineral-wool"], "family": "mineral-wool"}
	some name, case in {
		"no note": {"board": {}, "more": {}, "limits": []},
		"open board": {"board": wool, "more": {}, "limits": [_note]},
		"other place": {"board": {}, "more": {"place": "Lobby"}, "limits": [_note]},
		"not there": {"board": {"polarity": "no"}, "more": {}, "limits": [_note]},
		"struck": {"board": {}, "more": {"struck": true}, "limits": [_note]},
		"note on tight sheets": {
			"board": {},
			"more": {},
			"limits": [object.union(_note, {"text": "outside of the deck: 0.1 perm or less", "max": 5.7})],
		},
	}
	found := open_outside.findings with input as _doc(_board(case.board), case.more, case.limits)
	count(found) == 0
}

test_bound_of_ten_perms if {
	bound := object.union(_note, {"min": 572.135, "text": "outside of the sheet 10 perms or more"})
	found := open_outside.findings with input as _doc(_board({}), {}, [bound])
	count(found) == 1
}
