package data.back_early_test

import data.data.back_early
import data.lib.season_bench_test as bench

_cells := {"sent": "R12", "returned": "S12", "approved": "T12"}

_found(dates, more) := found if {
	days := {slot: bench.day(day, day, _cells[slot]) | some slot, day in dates}
	line := bench.sheet(object.union({"dates": days, "cells": _cells}, more))
	found := back_early.findings with input as bench.document([line], [], [])
}

test_whole_finding if {
	_found({"sent": "2027-03-15", "returned": "2027-03-02"}, {}) == {{
		"line": "W!12",
		"cells": ["R12", "S12"],
		"message": concat(" ", [
			"The submittal of FM-1 (rubberized-asphalt-membrane) came back on 2 Mar 2027,",
			"before it was sent on 15 Mar 2027",
		]),
	}}
}

test_approval_and_no_material if {
	found := _found({"sent": "2027-03-15", "approved": "2027-03-14"}, {"items": []})
	{f.message | some f in found} == {concat(" ", [
		"The submittal of this row was approved on 14 Mar 2027,",
		"before it was sent on 15 Mar 2027",
	])}
}

test_one_finding_for_one_mistake if {
	count(_found({"sent": "2027-03-15", "approved": "2027-03-03", "returned": "2027-03-02"}, {})) == 1
}

test_silent[name] if {
	some name, case in {
		"the same day": [{"sent": "2027-03-15", "returned": "2027-03-15"}, {}],
		"after": [{"sent": "2027-03-15", "returned": "2027-03-20"}, {}],
		"not back yet": [{"sent": "2027-03-15"}, {}],
		"never sent": [{"returned": "2027-03-15"}, {}],
		"struck": [{"sent": "2027-03-15", "returned": "2027-03-02"}, {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}
