package sequence.pan_back_dam_test

import data.sequence.pan_back_dam

_words := {"words": ["sill pan"], "dam_words": ["back dam"]}

_found(line) := found if {
	bare := {
		"id": "W!4", "mark": "W-4", "struck": false, "signals": [],
		"cells": {"place": "B4", "remark": "H4"},
		"texts": {"place": "Sill pan, type A"},
	}
	doc := {"lines": [object.union(bare, line)], "contacts": [], "products": [], "windows": []}
	found := pan_back_dam.findings with input as doc with data.sequence.pan as _words
}

test_fires if {
	_found({}) == {{
		"line": "W!4",
		"cells": ["B4"],
		"message": "W-4 is a sill pan, and nothing is said of a back dam",
	}}
}

test_silent[name] if {
	some name, line in {
		"a back dam": {"texts": {"place": "Sill pan", "remark": "1 in. back dam"}},
		"a pan of another sort": {"texts": {"place": "Drain pan"}},
		"struck": {"struck": true},
		"by others": {"signals": [{"id": "by_others", "no": false}]},
	}
	count(_found(line)) == 0
}
