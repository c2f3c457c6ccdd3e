package pairing.past_shelf_test

import data.lib.desk_test as desk
import data.pairing.past_shelf

_told := {
	"id": "past_shelf",
	"no": false,
	"text": "pails out of date",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := past_shelf.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: pails out of date, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is told to be past its date",
			"(\"pails out of date\")",
		]),
	}}
}

test_put_right[text] if {
	some text in ["pails out of date, replaced by new ones"]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("pails out of date, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
	}
	count(_found("pails out of date", more)) == 0
}

# Rolls told by the month in which they were made.
_march := {"from": "2025-03-01", "to": "2025-03-31", "text": "Mar 2025", "at": {"sheet": "W", "row": 12, "cell": "R12"}}

_made(days, life) := found if {
	row := desk.row(12, "FM-1", {
		"role": "membrane",
		"dates": {"made": _march},
		"figures": {"shelf_months": desk.figure(life, sprintf("%d months", [life]), "months")},
		"spans": {"stock_days": {"min": days, "max": days, "last": days, "from": "2025-03-01", "to": "2026-06-01"}},
	})
	found := past_shelf.findings with input as desk.document([row], [], [])
}

test_shelf_life_run_out if {
	some f in _made(430, 12)
	endswith(f.message, "goes on 430 days or more after it was made; its shelf life is 12 months")
	"R12" in f.cells
}

test_shelf_life_left if {
	count(_made(372, 12)) == 0
	count(_made(430, 18)) == 0
}
