package data.date_impossible_test

import data.data.date_impossible
import data.lib.desk_test as desk

_day(state, text) := {"from": "", "to": "", "text": text, "state": state, "ref": "", "note": "", "at": {
	"sheet": "W",
	"row": 12,
	"cell": "I12",
}}

_found(day, more) := found if {
	row := object.union(desk.row(12, "FM-1", {"dates": {"install": day}}), more)
	found := date_impossible.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found(_day("impossible", "Jun 31 2026"), {}) == {{
		"line": "W!12",
		"cells": ["I12"],
		"message": "the installation date \"Jun 31 2026\" does not exist",
	}}
}

test_pour if {
	at := {"sheet": "Pours", "row": 10, "cell": "C10"}
	pour := {"name": "Pour 9", "placed": _day("impossible", "30 Feb 2026"), "at": at}
	doc := object.union(desk.document([], [], []), {"pours": [pour]})
	found := date_impossible.findings with input as doc
	{f.message | some f in found} == {"the placing date \"30 Feb 2026\" of Pour 9 does not exist"}
}

test_silent[name] if {
	some name, case in {
		"a date": {"day": _day("day", "30 Jun 2026"), "more": {}},
		"not read": {"day": _day("unknown", "soon"), "more": {}},
		"missing": {"day": _day("missing", ""), "more": {}},
		"struck": {"day": _day("impossible", "31 Jun"), "more": {"struck": true}},
	}
	count(_found(case.day, case.more)) == 0
}
