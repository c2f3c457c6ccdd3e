package data.weekday_off_test

import data.data.weekday_off
import data.lib.desk_test as desk

_found(note, more) := found if {
	day := {"from": "2026-06-02", "text": "Mon 6/2/2026", "state": "day", "note": note, "at": {"cell": "I12"}}
	row := object.union(desk.row(12, "R-1", {"dates": {"install": day}}), more)
	found := weekday_off.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("the weekday does not fall on that date", {}) == {{
		"line": "W!12",
		"cells": ["I12"],
		"message": "the weekday in \"Mon 6/2/2026\" does not fall on that date (installation)",
	}}
}

test_silent[name] if {
	some name, case in {
		"fine": {"note": "", "more": {}},
		"order of day and month": {"note": "day and month could be read both ways", "more": {}},
		"struck": {"note": "weekday off", "more": {"struck": true}},
	}
	count(_found(case.note, case.more)) == 0
}

test_no_dates if count(weekday_off.findings) == 0 with input as desk.document([desk.row(12, "R-1", {})], [], [])
