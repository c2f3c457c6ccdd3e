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
