package sequence.approved_later_test

import data.lib.season_bench_test as bench
import data.sequence.approved_later

_cells := {"install": "K12", "sent": "R12", "returned": "S12", "approved": "T12", "mockup": "U12"}

_found(dates, more) := found if {
	days := {slot: bench.day(day, day, _cells[slot]) | some slot, day in dates}
	line := bench.sheet(object.union({"dates": days, "cells": _cells}, more))
	found := approved_later.findings with input as bench.document([line], [], [])
}

test_whole_finding if {
	_found({"install": "2027-05-03", "approved": "2027-05-20"}, {}) == {{
		"line": "W!12",
		"cells": ["K12", "T12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes on 3 May 2027,",
			"before its submittal is approved on 20 May 2027",
		]),
	}}
}

test_return if {
	found := _found({"install": "2027-05-03", "sent": "2027-05-01", "returned": "2027-05-20"}, {"items": []})
	{f.message | some f in found} == {"The material goes on 3 May 2027, before its submittal is back on 20 May 2027"}
}

test_silent[name] if {
	some name, case in {
		"the same day": [{"install": "2027-05-20", "approved": "2027-05-20"}, {}],
		"after": [{"install": "2027-05-21", "approved": "2027-05-20"}, {}],
		"received, of what is not said": [{"install": "2027-05-03", "returned": "2027-05-20"}, {}],
		"approved though sent again": [
			{"install": "2027-05-03", "sent": "2027-05-05", "returned": "2027-05-20", "approved": "2027-05-02"},
			{},
		],
		"swapped": [{"install": "2027-05-03", "sent": "2027-05-25", "returned": "2027-05-20"}, {}],
		"no answer yet": [{"install": "2027-05-03", "sent": "2027-05-01"}, {}],
		"struck": [{"install": "2027-05-03", "approved": "2027-05-20"}, {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}

test_mockup_after_the_work if {
	found := _found({"install": "2027-05-03", "mockup": "2027-05-20"}, {})
	{f.message | some f in found} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) goes on 3 May 2027,",
		"before its mock-up on 20 May 2027",
	])}
	count(_found({"install": "2027-05-03", "mockup": "2027-05-03"}, {})) == 0
	count(_found({"install": "2027-05-03", "mockup": "2027-04-20"}, {})) == 0
	count(_found({"install": "2027-05-03", "mockup": "2027-05-20"}, {"place": "Mock-up, north"})) == 0
}
