package data.days_miscounted_test

import data.data.days_miscounted
import data.lib.desk_test as desk

_row(n, said, counted) := desk.row(n, "R-1", {
	"figures": {"planned_open_days": object.union(
		desk.figure(said, sprintf("%d", [said]), "d"),
		{"at": {"sheet": "W", "row": n, "cell": sprintf("N%d", [n])}},
	)},
	"dates": {"install": _day("I", n), "cover": _day("J", n)},
	"spans": {"bare_days": {
		"min": counted, "max": counted, "last": counted,
		"from": "2026-08-03", "to": "2026-09-14",
	}},
})

_day(column, n) := {"state": "day", "text": "", "at": {"sheet": "W", "row": n, "cell": sprintf("%s%d", [column, n])}}

_right := [_row(n, 40 + n, 40 + n) | some n in [21, 22, 23, 24]]

_found(lines) := found if {
	found := days_miscounted.findings with input as desk.document(lines, [], [])
}

test_fires_in_full if {
	_found(array.concat([_row(12, 14, 42)], _right)) == {{
		"line": "W!12",
		"cells": ["I12", "J12", "N12"],
		"message": concat(" ", [
			"R-1 (rubberized-asphalt-membrane) is counted as 14 days in the open,",
			"but its dates (3 Aug 2026 to 14 Sep 2026) make 42 days",
		]),
	}}
}

test_counts_more_than_the_dates if count(_found(array.concat([_row(12, 60, 42)], _right))) == 1

# A span is counted from one end of it, as the column does.
test_counts_from_the_first_day if {
	span := {"dates": {"install": {"state": "span"}}}
	count(_found(array.concat([object.union(_row(12, 14, 42), span)], _right))) == 1
}

test_silent[name] if {
	span := {"dates": {"cover": {"state": "span"}}}
	some name, lines in {
		"agrees": _right,
		"both ends counted": array.concat([_row(12, 44, 42)], _right),
		"few rows": [_row(12, 14, 42), _row(13, 40, 40)],
		"the column counts something else": array.concat([_row(12, 14, 42), _row(13, 30, 42)], _right),
		"a span": array.concat([object.union(_row(12, 14, 42), span)], _right),
		"struck": array.concat([object.union(_row(12, 14, 42), {"struck": true})], _right),
	}
	count(_found(lines)) == 0
}
