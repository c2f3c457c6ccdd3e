package pairing.concrete_green_test

import data.lib.bench_test as bench
import data.pairing.concrete_green

_green := object.union(bench.concrete, {"text": "green concrete curb"})

_found(items, more) := found if {
	found := concrete_green.findings with input as bench.schedule(items, more, [])
}

test_fires if {
	_found([bench.sbs, _green], {}) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": "Asphaltic sheet FM-1 goes on green concrete curb, and no placing date shows how old it is",
	}}
}

test_silent[name] if {
	some name, case in {
		"old concrete": {"items": [bench.sbs, bench.concrete], "more": {}},
		"the age is judged": {
			"items": [bench.sbs, _green],
			"more": {"spans": {"concrete_age_days": {"min": 20, "max": 20}}},
		},
		"green is a color": {
			"items": [bench.sbs, object.union(bench.glass_mat, {"text": "green glass-mat board"})],
			"more": {},
		},
		"fluid": {"items": [bench.fluid, _green], "more": {}},
	}
	count(_found(case.items, case.more)) == 0
}
