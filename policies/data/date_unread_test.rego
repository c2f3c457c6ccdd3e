package data.date_unread_test

import data.data.date_unread
import data.lib.desk_test as desk

_found(state, text, role) := found if {
	day := {"from": "", "to": "", "text": text, "state": state}
	row := desk.row(12, "FM-1", {"role": role, "dates": {"install": day}})
	found := date_unread.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("unknown", "13/32/26", "membrane") == {{
		"line": "W!12",
		"cells": ["I12"],
		"severity": "warning",
		"message": "\"13/32/26\" was not understood as the installation date",
	}}
}

test_note_elsewhere if desk.levels(_found("unknown", "13/32/26", "insulation")) == {"note"}

test_silent[name] if {
	some name, case in {
		"words": {"state": "unknown", "text": "stays in view"},
		"read": {"state": "day", "text": "3/9/26"},
		"open": {"state": "open", "text": "TBD 2"},
		"empty": {"state": "missing", "text": ""},
	}
	count(_found(case.state, case.text, "membrane")) == 0
}

test_no_dates if count(date_unread.findings) == 0 with input as desk.document([desk.row(12, "FM-1", {})], [], [])
