package sequence.opening_order_test

import data.lib.season_bench_test as bench
import data.sequence.opening_order

_found(texts, more) := found if {
	line := bench.sheet(object.union({"texts": texts, "cells": {"order": "G12", "remark": "V12"}}, more))
	found := opening_order.findings with input as bench.document([line], [], [])
}

test_whole_finding if {
	_found({"order": "Head -> jambs -> sill"}, {}) == {{
		"line": "W!12",
		"cells": ["G12"],
		"message": "the opening is flashed in the order \"Head -> jambs -> sill\", its head before its sill",
	}}
}

test_ways_to_say_it[text] if {
	some text in ["h/j/s", "HD, JAMBS, SILL", "head, then jambs and sill pan.", "H > S"]
	count(_found({"remark": text}, {})) == 1
}

test_silent[name] if {
	some name, case in {
		"from below": [{"order": "Sill, jambs, head"}, {}],
		"letters from below": [{"order": "S-J-H"}, {}],
		"no sill": [{"order": "head, jambs"}, {}],
		"a layer": [{"order": "3"}, {}],
		"more is said": [{"remark": "head and sill wrapped in one piece"}, {}],
		"empty": [{"order": ""}, {}],
		"struck": [{"order": "h/j/s"}, {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}

test_part_of_the_cells_of_a_slot[text] if {
	some text in ["brick; head, jambs, sill", "heads, jambs, sills; primed"]
	count(_found({"substrate": text}, {"cells": {"substrate": "F12"}})) == 1
}

test_parts_in_an_order_of_their_own if {
	count(_found({"remark": "head taped; sill pan set; jambs"}, {})) == 0
	count(_found({"substrate": "head block; sill, jamb, head"}, {"cells": {"substrate": "F12"}})) == 0
}

# Rows of one part each, "PART what openings" by the day.
_strip(row, type, day) := object.union(bench.sheet({}), {
	"id": sprintf("W!%d", [row]),
	"row": row,
	"texts": {"type": type},
	"items": [object.union(bench.fm_1, {"product": "FM-1"})],
	"cells": {"type": sprintf("C%d", [row]), "install": sprintf("J%d", [row])},
	"dates": {"install": {"from": day, "to": day, "text": day, "state": "day"}},
})

_rows(head, jambs, sill) := found if {
	lines := [_strip(12, head[0], head[1]), _strip(13, jambs[0], jambs[1]), _strip(14, sill[0], sill[1])]
	found := opening_order.findings with input as bench.document(lines, [], [])
}

test_rows_from_the_head_down if {
	found := _rows(["Heads, doors D4", "2027-05-03"], ["Jambs, doors D4", "2027-05-04"], ["Sills, doors D4", "2027-05-05"])
	{[f.line, f.cells] | some f in found} == {["W!12", ["C12", "J12"]]}
}

test_rows_silent[name] if {
	some name, case in {
		"from below": [["Head, east", "2027-05-05"], ["Jambs, east", "2027-05-04"], ["Sill, east", "2027-05-03"]],
		"same day": [["Head, east", "2027-05-03"], ["Jambs, east", "2027-05-03"], ["Sill, east", "2027-05-03"]],
		"other openings": [["Head, east", "2027-05-03"], ["Jambs, west", "2027-05-04"], ["Sill, west", "2027-05-05"]],
		"no jambs": [["Head, east", "2027-05-03"], ["Field, east", "2027-05-04"], ["Sill, east", "2027-05-05"]],
		"two parts": [["Head and sill", "2027-05-03"], ["Jambs", "2027-05-04"], ["Sill", "2027-05-05"]],
	}
	count(_rows(case[0], case[1], case[2])) == 0
}

# The pieces may be named with their tags in the cell of the product; a list that tells no order is none.
test_order_in_the_cell_of_the_product[text] if {
	some text, n in {
		"Head flashing QT-2, then jamb strips QT-2, then sill pan QF-1": 1,
		"head > jambs > sill QF-1": 0,
		"head strip -> jambs -> sill": 1,
		"head strip, jamb strips, sill pan QF-1": 0,
		"sill pan QF-1, then jambs, then head strip QT-2": 0,
		"head strip QT-2, then sealant, then sill pan QF-1": 0,
	}
	items := [{"tag": "QT-2"}, {"tag": "QF-1"}, {"tag": ""}]
	count(_found({"material": text}, {"items": items})) == n
}
