package data.primer_contradiction_test

import data.data.primer_contradiction
import data.lib.bench_test as bench
import data.lib.desk_test as desk

_none(slot) := object.union(desk.said(55, "primer_none", slot), {"text": "No primer at this location"})

_items := [desk.own(55, "SAF-1"), desk.named(55, bench.solvent_primer, "PR-2"), bench.glass_mat]

_found(more, products) := found if {
	row := object.union(desk.row(55, "SAF-1", {"items": _items, "signals": [_none("remark")]}), more)
	found := primer_contradiction.findings with input as desk.document([row], products, [])
}

_needs := desk.product("SAF-1", 4, {"accepts": [bench.accepts("ext. gyp.", ["gypsum"], "always", [])]})

test_fires_in_full if {
	_found({}, []) == {{
		"line": "W!55",
		"cells": ["F55", "M55"],
		"severity": "warning",
		"message": "the primer cell says P-1, and the remark says \"No primer at this location\"",
	}}
}

test_needed_primer_is_an_error if desk.levels(_found({}, [_needs])) == {"error"}

test_silent[name] if {
	some name, more in {
		"no remark": {"signals": []},
		"said in the primer cell": {"signals": [_none("primer")]},
		"denied": {"signals": [object.union(_none("remark"), {"no": true})]},
		"primed earlier": {"signals": [_none("remark"), desk.said(55, "primed_earlier", "remark")]},
		"no primer on one substrate": {"items": array.concat(_items, [object.union(bench.angle, {
			"at": {"sheet": "W", "row": 55, "cell": "M55"},
			"clause": "No primer at this location of clean metal",
		})])},
		"a side without": {"texts": {"primer": "none; PR-2"}},
		"no primer named": {"items": [desk.own(55, "SAF-1")]},
		"struck": {"struck": true},
	}
	count(_found(more, [])) == 0
}
