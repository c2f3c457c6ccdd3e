package vapor.outside_asked_test

import data.lib.desk_test as desk
import data.vapor.outside_asked

_note(text) := {"text": text, "at": {"sheet": "N", "row": 7, "cell": "B7"}}

_ask := _note("EW-2 (batts in studs, painted inside): c.i. min R-10")

_wool(n, more) := desk.row(n, "", object.union(
	{
		"group": "EW-2",
		"place": sprintf("bay %d", [n]),
		"items": [object.union(desk.own(n, ""), {"text": "wool board", "class": "insulation", "family": "mineral-wool"})],
		"texts": {"touches": "R-6.3"},
	},
	more,
))

_found(lines, note) := found if {
	doc := desk.document(lines, [], [])
	found := outside_asked.findings with input as object.union(doc, {"project": {"notes": [note]}})
}

test_whole_finding if {
	some found in _found([_wool(12, {})], _ask)
	"G12" in found.cells
	endswith(found.message, " has R-6.3; the notes ask for R-10 outside in EW-2")
	found.related[0].what == "\"EW-2 (batts in studs, painted inside): c.i. min R-10\""
}

test_by_the_note[name] if {
	some name, n in {
		"EW-1, EW-2 continuous insulation ≥R-8": 1,
		"EW-2: R-7.5 or more outboard": 1,
		"EW-2: outboard R-6.3 or better": 0,
		"EW-3: R-10 or more outboard": 0,
		"EW-2: R-10 or more": 0,
		"EW-2: at least R-5 outboard; EW-3: at least R-10 outboard": 0,
	}
	count(_found([_wool(12, {})], _note(name))) == n
}

test_silent[name] if {
	some name, lines in {
		"enough": [_wool(12, {"texts": {"touches": "R-10"}})],
		"by the inch": [_wool(12, {"texts": {"touches": "R-4 per in."}})],
		"of the batts": [_wool(12, {"texts": {"touches": "R-9 batts in studs"}})],
		"two figures": [_wool(12, {"texts": {"touches": "R-6.3", "remark": "R-8 at corners"}})],
		"another wall": [_wool(12, {"group": "EW-3"})],
		"two layers": [_wool(12, {"place": "bay"}), _wool(13, {"place": "bay"})],
		"struck": [_wool(12, {"struck": true})],
	}
	count(_found(lines, _ask)) == 0
}

_column(value, text, unit, more) := desk.row(12, "R-01", object.union(
	{
		"group": "EW-2",
		"figures": {"outside_r_m2kw": object.union(
			desk.figure(value, text, unit),
			{"at": {"sheet": "W", "row": 12, "cell": "Q12"}},
		)},
	},
	more,
))

_list := _note("EW-2 siding, wool R-12, sheet, studs w/ R-20 batts")

test_list_of_walls_in_full if {
	_found([_column(1.41, "8", "R-ip", {})], _list) == {{
		"line": "W!12",
		"cells": ["Q12"],
		"message": "The row has R-8 outside; the list of walls has R-12",
		"severity": "warning",
		"related": [{"at": _list.at, "cells": ["B7"], "what": sprintf(`"%s"`, [_list.text])}],
	}}
}

test_column_by_the_list[name] if {
	some name, n in {
		"EW-2: siding, wool RSI 2.1, sheet, plywood": 1,
		"EW-2 – siding / wool R-12, sheet, plywood": 1,
		"EW-2 siding, wool R-8, sheet, plywood": 0,
		"EW-2 siding, wool R-4 per inch, sheet, plywood": 0,
		"EW-2 siding, wool R-8, foam R-4, sheet": 0,
		"EW-2 siding, sheet, plywood, studs w/ R-20 batts": 0,
		"EW-3 siding, wool R-12, sheet, plywood": 0,
		"EW-2 siding, wool, sheet, plywood": 0,
	}
	count(_found([_column(1.41, "8", "R-ip", {})], _note(name))) == n
}

test_column_by_the_note if {
	some found in _found([_column(1.2, "1.2", "RSI", {})], _ask)
	found.severity == "error"
	found.message == "The row has RSI 1.2 outside; the notes ask for RSI 1.76"
}

test_column_silent[name] if {
	some name, row in {
		"another wall": _column(1.41, "8", "R-ip", {"group": "EW-4"}),
		"enough": _column(2.2, "12.5", "R-ip", {}),
		"rounded": _column(2.08, "11.8", "R-ip", {}),
		"struck": _column(1.41, "8", "R-ip", {"struck": true}),
	}
	count(_found([row], _list)) == 0
}

# A table of build-ups tells the wall as well.
test_column_by_a_table_of_walls[name] if {
	board := object.union(desk.own(3, ""), {
		"slot": "layers",
		"class": "insulation",
		"family": "mineral-wool",
		"clause": "wool R-14.8",
		"r_m2kw": 2.6066,
	})
	some name, case in {
		"one board": {"items": [board], "says": {"The row has R-8 outside; the list of walls has R-14.8"}},
		"in the studs": {"items": [object.union(board, {"clause": "R-14.8 batts in studs"})], "says": set()},
		"not told": {"items": [object.remove(board, ["r_m2kw"])], "says": set()},
		"two boards": {"items": [board, board], "says": set()},
	}
	list := object.union(
		object.remove(desk.row(3, "", {"group": "", "texts": {"mark": "EW-2"}, "items": case.items}), ["cells"]),
		{"cells": {"mark": "A3", "layers": "C3"}},
	)
	{f.message | some f in _found([_column(1.41, "8", "R-ip", {}), list], _note("none"))} == case.says
}
