package sequence.sill_over_jamb_test

import data.lib.season_bench_test as bench
import data.sequence.sill_over_jamb

_found(place, texts, more) := found if {
	line := bench.sheet(object.union({"place": place, "texts": texts}, more))
	found := sill_over_jamb.findings with input as bench.document([line], [], [])
}

test_whole_finding if {
	_found("Sill, W4", {"edge": "laid last, on top of the jamb strips"}, {}) == {{
		"line": "W!12",
		"cells": ["C12", "O12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) at a sill is lapped over the strips of the jambs",
			`("laid last, on top of the jamb strips")`,
		]),
	}}
}

test_ways_to_say_it[text] if {
	some text in ["100 mm over feet of jamb flashings", "over both jambs", "over the lower ends of the side tapes"]
	count(_found("Window sills, level 2", {"lap": text}, {})) == 1
}

test_silent[name] if {
	some name, case in {
		"a head": ["Window head", {"lap": "75 mm over jamb strips"}, {}],
		"one piece": ["Sill, jambs and head", {"lap": "over jambs"}, {}],
		"jambs over it": ["Window sill", {"edge": "jamb strips lap over"}, {}],
		"denied": ["Window sill", {"remark": "never over the jamb strips"}, {}],
		"a side wall": ["Window sill", {"remark": "over side wall 6 in."}, {}],
		"empty": ["", {"lap": ""}, {}],
		"struck": ["Window sill", {"lap": "over jambs"}, {"struck": true}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
