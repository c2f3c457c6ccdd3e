package sequence.cover_uninspected_test

import data.lib.season_bench_test as bench
import data.sequence.cover_uninspected

_row(most) := bench.sheet({
	"spans": {"unseen_days": bench.span(most, most, most, "2027-07-20", "2027-07-13")},
	"cells": {"inspected": "R12", "cover": "L12"},
})

_found(lines) := found if {
	found := cover_uninspected.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([_row(-7)]) == {{
		"line": "W!12",
		"cells": ["L12", "R12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is covered on 13 Jul 2027, 7 days before its",
			"inspection on 20 Jul 2027",
		]),
	}}
}

test_same_day_is_fine if _found([_row(0)]) == set()

test_later_cover_is_fine if _found([_row(3)]) == set()

test_without_dates if _found([bench.sheet({})]) == set()
