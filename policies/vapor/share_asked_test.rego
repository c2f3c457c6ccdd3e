package vapor.share_asked_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.share_asked

_note(text) := {"text": text, "at": {"sheet": "N", "row": 7, "cell": "B7"}}

_half := _note("At least half of the R-value outboard of the membrane")

# A wall type told in one row: its layers with their resistance.
_build_up(layers, r) := object.union(
	wall.profile([object.union(layer, {"line": "W!50"}) | some layer in layers], wall.cold, {"layers": [
	{"outside_share": 0.5, "vapor_class": "", "r_m2kw": one} |
		some one in r
	]}),
	{"lines": ["W!50"]},
)

_empty := _build_up([wall.gypsum, wall.sheathing, wall.sheet, wall.wool], [0.08, 0.08, 0, 2])

_type := bench.line("W!50", 50, {"texts": {"type": "T7"}, "cells": {"layers": "C50"}})

_sheet := object.union(bench.sbs, {"text": "AB-1"})

_batts(clause) := object.union(
	bench.item("remark", "batts", "glass-fiber-insulation", "insulation", ["glass-fiber"]),
	{"clause": clause},
)

_row(more) := bench.line("W!12", 12, object.union(
	{"items": [_sheet, _batts("R-20 batts in the studs")], "group": "T7"},
	more,
))

_found(row, profile, note) := found if {
	doc := desk.document([row, _type], [], [])
	with_note := object.union(doc, {"profiles": [profile], "project": {"notes": [note], "limits": [], "signals": []}})
	found := share_asked.findings with input as with_note
}

test_studs_filled_later if {
	_found(_row({}), _empty, _half) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": "AB-1 has 36 % of the insulation outside of it, with batts inside; the notes ask for 50 %",
		"related": [
			{
				"at": {"sheet": "N", "row": 7, "cell": "B7"},
				"cells": ["B7"],
				"what": "\"At least half of the R-value outboard of the membrane\"",
			},
			{"line": "W!50", "cells": ["C50"], "what": "the build-up of the wall"},
		],
	}}
}

test_by_the_note[name] if {
	some name, n in {
		"Not less than 60 % of insulation R-value outside the air barrier": 1,
		"Not less than 30 % of insulation R-value outside the air barrier": 0,
		"Min. 55% of (ext. + cavity) R outside": 1,
		"60% of the total area outside is glass": 0,
		"T7: two-thirds of the RSI outboard of the sheet": 1,
		"Up to half of the insulation outside the membrane": 0,
		"Half of the sheets are stored outside": 0,
		"Room at 45 % RH. At least 60 % of the nominal R is outboard of the sheathing": 1,
		"Room at 60 % relative humidity; 30 % of the nominal R outside of the sheet": 0,
	}
	count(_found(_row({}), _empty, _note(name))) == n
}

test_by_the_row[name] if {
	some name, tc in {
		"short by little": {"row": {"items": [_sheet, _batts("RSI 2.1 batts in the studs")]}, "n": 0},
		"by the inch is no board": {"row": {"items": [_sheet, _batts("batts, R-3.7 per in., in the studs")]}, "n": 0},
		"not in the studs": {"row": {"items": [_sheet, _batts("R-20 batts kept dry")]}, "n": 0},
		"another wall": {"row": {"group": "T8"}, "n": 0},
		"struck": {"row": {"struck": true}, "n": 0},
		"filled": {"row": {}, "n": 1},
	}
	count(_found(_row(tc.row), _empty, _half)) == tc.n
}

test_the_build_up_itself if {
	layers := [wall.gypsum, wall.batt, wall.sheathing, wall.sheet, wall.wool]
	bare := _row({"items": [_sheet]})
	found := _found(bare, _build_up(layers, [0.08, 3.5, 0.08, 0, 2]), _half)
	{f.message | some f in found} == {concat("", [
		"AB-1 has 36 % of the insulation outside of it, with batt inside; ",
		"the notes ask for 50 %",
	])}
	count(_found(bare, _build_up(layers, [0.08, 3.5, 0.08, 0, 3.5]), _half)) == 0
}

_told(text, group) := bench.line("W!12", 12, {
	"items": [_sheet],
	"group": group,
	"texts": {"touches": text},
	"cells": {"material": "C12", "touches": "G12"},
})

test_the_row_tells_both if {
	_found(_told("R-5 outboard, R-20 batts in studs", "T7"), _empty, _half) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"message": concat("", [
			"this row has 20 % of the insulation outside (\"R-5 outboard, R-20 batts in studs\"); ",
			"the notes ask for 50 %",
		]),
		"related": [{
			"at": {"sheet": "N", "row": 7, "cell": "B7"},
			"cells": ["B7"],
			"what": "\"At least half of the R-value outboard of the membrane\"",
		}],
	}}
}

test_the_row_tells_both_and_the_note[name] if {
	some name, tc in {
		"share": ["RSI 1.0 exterior, RSI 3.5 in the studs", "Filled walls: outboard share of insul. R 40 % min", 1],
		"enough": ["R-20 outboard, R-19 batt in stud", "Filled walls: outboard share of insul. R 40 % min", 0],
		"mineral batts": ["R-8 outboard; R-23 mineral batts in the studs", "Outboard share of insul. R 40 % min", 1],
		"two units": ["RSI 1.0 outboard, R-19 batt in stud", "Outboard share of insul. R 40 % min", 0],
		"by the inch": ["R-6 per in. outboard, R-19 batt in stud", "Outboard share of insul. R 40 % min", 0],
		"one figure": ["R-5 outboard, studs empty", "Outboard share of insul. R 40 % min", 0],
		"another wall": ["R-5 outboard, R-20 batts in studs", "T7: outboard share of insulation 40 % min", 0],
	}
	count(_found(_told(tc[0], "T8"), _empty, _note(tc[1]))) == tc[2]
}

# The row of the insulation itself tells what lies in the studs, and its data the resistance of a millimeter or an inch.
test_by_the_board[name] if {
	some name, tc in {
		"thin board": {"mm": 40, "rate": "stone wool, RSI 0.025 per mm", "remark": "RSI 1.8 batts left in studs", "n": 1},
		"thick board": {"mm": 90, "rate": "stone wool, RSI 0.025 per mm", "remark": "RSI 1.8 batts left in studs", "n": 0},
		"by the inch": {"mm": 50.8, "rate": "wool, R-4/in.", "remark": "R-13 batts in the studs", "n": 1},
		"thick by the inch": {"mm": 101.6, "rate": "wool, R-4/in.", "remark": "R-13 batts in the studs", "n": 0},
		"no rate": {"mm": 40, "rate": "stone wool", "remark": "RSI 1.8 batts left in studs", "n": 0},
		"empty studs": {"mm": 40, "rate": "stone wool, RSI 0.025 per mm", "remark": "no batts", "n": 0},
	}
	board := object.union(desk.own(12, "I-3"), {"family": "mineral-wool", "class": "insulation"})
	row := desk.row(12, "I-3", {
		"group": "T7",
		"role": "insulation",
		"items": [board, object.union(_sheet, {"slot": "substrate"}), _batts(tc.remark)],
		"figures": {"board_mm": desk.figure(tc.mm, "x", "mm")},
	})
	doc := desk.document([row], [desk.product("I-3", 4, {"texts": {"material": tc.rate}})], [])
	found := share_asked.findings with input as object.union(doc, {"project": {
		"notes": [_half],
		"limits": [],
		"signals": [],
	}})
	count(found) == tc.n
}
