package pairing.primer_acrylic_test

import data.lib.bench_test as bench
import data.pairing.primer_acrylic

_none := {"texts": {"primer": "none"}}

_found(items, more, products) := found if {
	found := primer_acrylic.findings with input as bench.schedule(items, more, products)
}

test_fires if {
	_found([bench.permeable, bench.block], _none, []) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"severity": "warning",
		"message": concat("", [
			`Acrylic sheet FM-4 goes on CMU without primer (the primer cell says "none"); `,
			"such a sheet usually needs one there",
		]),
	}}
}

test_glass_mat_needs_none if count(_found([bench.permeable, bench.glass_mat], _none, [])) == 0

test_silent[name] if {
	data_of_it := bench.product("FM-4", {"accepts": [bench.accepts("any", ["metal"], "none", [])]})
	some name, case in {
		"clean face": {"items": [bench.permeable, bench.plywood], "products": []},
		"primer is named": {"items": [bench.permeable, bench.block, bench.water_primer], "products": []},
		"the sheet has data": {"items": [bench.own(bench.permeable), bench.block], "products": [data_of_it]},
		"fluid": {"items": [bench.fluid, bench.block], "products": []},
		"substrate not known": {
			"items": [bench.permeable, bench.item("substrate", "wall", "", "", [])],
			"products": [],
		},
	}
	count(_found(case.items, _none, case.products)) == 0
}
