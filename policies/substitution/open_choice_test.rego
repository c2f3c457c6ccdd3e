package substitution.open_choice_test

import data.lib.bench_test as bench
import data.substitution.open_choice

_found(signals) := found if {
	found := open_choice.findings with input as bench.schedule([bench.sbs, bench.concrete], {"signals": signals}, [])
}

_open := bench.said("open_choice", "any similar sheet ok")

test_whole_finding if {
	{f.message | some f in _found([_open])} == {concat("", [
		`FM-1 (rubberized-asphalt-membrane) may be another product ("any similar sheet ok"), `,
		"and nothing says by what it must be equal",
	])}
}

test_silent[name] if {
	some name, signals in {
		"bound to what is no worse": [_open, bench.said("equal_or_better", "equal or better")],
		"approved": [_open, object.union(bench.said("open_choice", "equal approved in writing"), {"no": true})],
		"nothing said": [],
	}
	count(_found(signals)) == 0
}
