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
