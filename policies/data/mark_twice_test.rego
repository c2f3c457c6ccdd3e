package data.mark_twice_test

import data.data.mark_twice
import data.lib.desk_test as desk

_row(n, id, mark, more) := object.union(
	desk.row(n, id, {"mark": mark, "place": "Stair 2 sill", "texts": {"mark": mark}}),
	more,
)

_others := [_row(n, "FM-1", sprintf("3.%d", [n]), {}) | some n in numbers.range(20, 27)]

_found(rows) := found if {
	found := mark_twice.findings with input as desk.document(rows, [], [])
}

_pair(more) := array.concat([_row(12, "FM-1", "3.04", {}), _row(19, "FM-3", "3.04", more)], _others)

test_fires_in_full if {
	_found(_pair({})) == {{
		"line": "W!12",
		"cells": ["A12", "C12", "F12"],
		"message": "3.04 is there twice for the same place, once with FM-1 and once with FM-3",
		"related": [{"line": "W!19", "cells": ["A19", "C19", "F19"], "what": "the other row"}],
	}}
}

test_silent[name] if {
	some name, more in {
		"other place": {"place": "Stair 3 sill"},
		"same material": {"items": [desk.own(19, "FM-1")]},
		"struck": {"struck": true},
		"other job": {"role": "sealant"},
		"layer of an assembly": {"order": "2"},
		"another work of the same row": {"row": 12},
		"mark carried down": {"texts": {"mark": ""}},
	}
	count(_found(_pair(more))) == 0
}

test_table_where_marks_repeat if {
	rows := [_row(n, sprintf("FM-%d", [n % 4]), sprintf("W%d", [n % 3]), {}) | some n in numbers.range(7, 12)]
	count(_found(rows)) == 0
}
