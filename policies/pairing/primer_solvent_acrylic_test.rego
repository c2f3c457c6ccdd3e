package pairing.primer_solvent_acrylic_test

import data.lib.bench_test as bench
import data.pairing.primer_solvent_acrylic

_sheet := bench.product("FM-4", {"accepts": [bench.accepts("CMU", ["concrete-masonry"], "listed", ["P-2"])]})

_found(items, products) := found if {
	found := primer_solvent_acrylic.findings with input as bench.schedule(items, {}, products)
}

test_fires if {
	_found([bench.own(bench.permeable), bench.block, bench.own(bench.solvent_primer)], [_sheet]) == {{
		"line": "W!12",
		"cells": ["C12", "F12"],
		"severity": "error",
		"message": concat("", [
			"Solvent-borne primer P-1 is put under acrylic sheet FM-4, whose acrylic adhesive it swells; ",
			"its data takes P-2 on CMU",
		]),
	}}
}

test_without_data_it_is_a_warning if {
	{f.severity | some f in _found([bench.permeable, bench.block, bench.solvent_primer], [])} == {"warning"}
}

test_silent[name] if {
	listed := bench.product("FM-4", {"accepts": [bench.accepts("CMU", ["concrete-masonry"], "listed", ["P-1"])]})
	some name, case in {
		"water-borne": {"items": [bench.permeable, bench.block, bench.water_primer], "products": []},
		"its data lists it": {
			"items": [bench.own(bench.permeable), bench.block, bench.own(bench.solvent_primer)],
			"products": [listed],
		},
		"asphaltic sheet": {"items": [bench.sbs, bench.block, bench.solvent_primer], "products": []},
	}
	count(_found(case.items, case.products)) == 0
}

# The solvent is for what the sheet touches, and not for its own bed.
test_primer_of_another_face if {
	other := object.union(bench.solvent_primer, {"primes": "J12"})
	count(_found([bench.permeable, bench.block, other], [])) == 0
}
