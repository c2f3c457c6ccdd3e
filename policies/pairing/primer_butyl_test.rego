package pairing.primer_butyl_test

import data.lib.bench_test as bench
import data.pairing.primer_butyl

_none := {"texts": {"primer": "none"}}

_found(items, more, products) := found if {
	found := primer_butyl.findings with input as bench.schedule(items, more, products)
}

test_fires if {
	_found([bench.butyl_tape, bench.concrete], _none, []) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"severity": "warning",
		"message": concat("", [
			`Butyl sheet FM-3 goes on CIP curb without primer (the primer cell says "none"); `,
			"such a sheet usually needs one there",
		]),
	}}
}

test_silent[name] if {
	data_of_it := bench.product("FM-3", {"accepts": [bench.accepts("any", ["metal"], "none", [])]})
	some name, case in {
		"clean face": {"items": [bench.butyl_tape, bench.angle], "products": []},
		"primer is named": {"items": [bench.butyl_tape, bench.concrete, bench.water_primer], "products": []},
		"the sheet has data": {"items": [bench.own(bench.butyl_tape), bench.concrete], "products": [data_of_it]},
		"fluid": {"items": [bench.fluid, bench.concrete], "products": []},
		"substrate not known": {
			"items": [bench.butyl_tape, bench.item("substrate", "wall", "", "", [])],
			"products": [],
		},
	}
	count(_found(case.items, _none, case.products)) == 0
}
