package pairing.dusty_test

import data.lib.bench_test as bench
import data.pairing.dusty

_dust := bench.said("dusty", "dusty saw cut")

_found(items, signals) := found if {
	found := dusty.findings with input as bench.schedule(items, {"signals": signals}, [])
}

test_fires if {
	_found([bench.permeable, bench.concrete], [_dust]) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"message": concat("", [
			"FM-4 (vapor-permeable-self-adhered-membrane) goes on a face that is not clean ",
			`("dusty saw cut"), without primer`,
		]),
	}}
}

test_silent[name] if {
	some name, case in {
		"brushed off": {
			"items": [bench.permeable, bench.concrete],
			"signals": [_dust, bench.said("removed", "brushed off")],
		},
		"primed": {"items": [bench.permeable, bench.concrete, bench.water_primer], "signals": [_dust]},
		"the missing primer is told instead": {"items": [bench.sbs, bench.block], "signals": [_dust]},
		"dust-free": {
			"items": [bench.permeable, bench.concrete],
			"signals": [object.union(_dust, {"no": true})],
		},
	}
	count(_found(case.items, case.signals)) == 0
}

# A primer holds to the dirt that nobody took off.
_primed := [bench.permeable, bench.concrete, bench.water_primer]

test_dirt_under_primer if {
	{f.message | some f in _found(_primed, [_dust, bench.said("dirt_stays", "nobody swept")])} == {concat("", [
		"FM-4 (vapor-permeable-self-adhered-membrane) and its primer go on a face that is not clean ",
		`("dusty saw cut")`,
	])}
}

test_dirt_brushed_off if {
	count(_found(_primed, [_dust, bench.said("dirt_stays", "thick dust"), bench.said("clean", "brushed clean")])) == 0
}
