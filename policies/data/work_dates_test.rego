package data.work_dates_test

import data.data.work_dates
import data.lib.season_bench_test as bench

_row(span, days) := bench.sheet({
	"spans": {span: bench.span(days, days, days, "2027-06-16", "2027-06-06")},
	"cells": {"install": "K12", "finish": "M12", "inspected": "R12"},
})

_found(lines) := found if {
	found := work_dates.findings with input as bench.document(lines, [], [])
}

test_done_before_begun if {
	_found([_row("work_days", -10)]) == {{
		"line": "W!12",
		"cells": ["K12", "M12"],
		"message": "FM-1 (rubberized-asphalt-membrane) is done on 6 Jun 2027, 10 days before it begins on 16 Jun 2027",
	}}
}

test_inspected_before_begun if {
	{f.message | some f in _found([_row("seen_days", -10)])} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) is inspected on 6 Jun 2027,",
		"10 days before it begins on 16 Jun 2027",
	])}
}

_sited(days) := bench.sheet({
	"spans": {"site_days": bench.span(days, days, days, "2027-06-16", "2027-06-06")},
	"cells": {"install": "K12", "delivered": "N12"},
	"dates": {
		"install": bench.day("2027-06-06", "2027-06-06", "K12"),
		"delivered": bench.day("2027-06-16", "2027-06-16", "N12"),
	},
})

test_begun_before_delivered if {
	_found([_sited(-10)]) == {{
		"line": "W!12",
		"cells": ["K12", "N12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes on 6 Jun 2027,",
			"before it is on site on 16 Jun 2027",
		]),
	}}
}

test_delivered_on_the_day_is_fine if _found([_sited(0)]) == set()

test_same_day_is_fine if _found([_row("work_days", 0), _row("seen_days", 0)]) == set()

test_without_dates if _found([bench.sheet({})]) == set()
