package substitution.lap_test

import data.lib.bench_test
import data.lib.swap_test
import data.substitution.lap

_found(was, now, order) := found if {
	line := bench_test.line("W!12", 12, {"cells": {"lap": "K12"}})
	pair := {"figures": [swap_test.compared("lap_mm", was, now, order)]}
	doc := object.union(swap_test.document([]), {"lines": [line], "comparison": {"pairs": [swap_test.pair([], pair)]}})
	found := lap.findings with input as doc
}

_four := swap_test.figure(101.6, "4", "in")

_two := swap_test.figure(50.8, "2", "in.")

test_shorter if {
	some f in _found(_four, _two, "lower")
	f.message == "laps 2 in where 4 in is specified"
	f.cells == ["K12"]
	f.related[0].at == {"sheet": "S", "row": 30}
}

test_silent[name] if {
	some name, order in {"longer": "higher", "the same": "equal", "no longer stated": "missing"}
	count(_found(_four, _two, order)) == 0
}
