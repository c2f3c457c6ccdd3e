package substitution.removed_test

import data.lib.swap_test
import data.substitution.removed

_was := {
	"line": "S!31",
	"mark": "W3",
	"place": "head",
	"text": "FM-3",
	"role": "flashing",
	"at": {"sheet": "S", "row": 31, "cell": "C31"},
}

_found(list, tables) := found if {
	document := swap_test.document([])
	found := removed.findings with input as object.union(document, {
		"comparison": {"removed": list},
		"reading": {"tables": tables},
	})
}

test_left_out if {
	_found([_was], [{"kind": "schedule", "sheet": "W", "heading_rows": [4, 5]}]) == {{
		"at": {"sheet": "W", "row": 5},
		"cells": [],
		"message": "W3, head, FM-3 of the specified schedule has no row in the submittal",
		"related": [{"at": {"sheet": "S", "row": 31}, "cells": [], "what": "specified in spec.xlsx"}],
	}}
}

test_without_a_heading_it_stands_at_the_file if {
	some f in _found([_was], [])
	f.at == {"sheet": "", "row": 0}
}

test_nothing_left_out_is_silent if count(_found([], [])) == 0
