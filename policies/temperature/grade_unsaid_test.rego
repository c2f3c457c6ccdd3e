package temperature.grade_unsaid_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.grade_unsaid

_found(line, checks, below, usable) := found if {
	grades := [
		bench.grade("standard", "standard grade", 4.44, "40 F", below, usable),
		bench.grade("low-temperature", "low-temperature grade", -6.67, "20 F", 0.07, 0.95),
	]
	doc := bench.document([bench.sheet(line)], [], [bench.window(checks, {"grades": grades})])
	found := grade_unsaid.findings with input as doc
}

test_whole_finding if {
	_found({}, [], 0.9, 0.12) == {{
		"line": "W!12",
		"cells": ["C12", "K12"],
		"message": concat(" ", [
			"No grade is given for FM-1 (rubberized-asphalt-membrane); on 19 Jan 2027 in Milwaukee 90% of working hours",
			"are below 40 °F, where the standard grade stops; the low-temperature grade (from 20 °F) would suit",
		]),
		"severity": "warning",
	}}
}

test_at_the_limit if {
	{f.severity | some f in _found({}, [], 0.22, 0.6)} == {"note"}
	count(_found({}, [], 0.21, 0.6)) == 0
}

test_silent[name] if {
	stated := bench.check("membrane", "FM-1", -6.67, "20 F", 0.3, 0.7, {})
	primer := bench.check("primer", "P-2", 4.44, "40 F", 0.9, 0.1, {})
	graded := object.union(bench.fm_1, {"keys": ["asphaltic", "grade-low-temp"]})
	some name, tc in {
		"a figure": {"line": {}, "checks": [stated]},
		"the primer is told of": {"line": {}, "checks": [primer]},
		"a named grade": {"line": {"items": [graded]}, "checks": []},
		"a fluid": {"line": {"items": [base.fluid]}, "checks": []},
		"no material": {"line": {"items": []}, "checks": []},
		"heated": {"line": {"signals": [bench.signal("heated", "shelter", "heated")]}, "checks": []},
	}
	count(_found(tc.line, tc.checks, 0.9, 0.1)) == 0
}
