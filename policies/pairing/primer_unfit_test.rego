package pairing.primer_unfit_test

import data.lib.bench_test as bench
import data.pairing.primer_unfit

_repellent := object.union(bench.block, {"text": "CMU, integral water repellent"})

_found(items, products) := found if {
	found := primer_unfit.findings with input as bench.schedule(items, {}, products)
}

test_fires if {
	_found([bench.sbs, _repellent, bench.water_primer], []) == {{
		"line": "W!12",
		"cells": ["E12", "F12"],
		"message": concat("", [
			"P-2 (water-borne) on CMU, integral water repellent seldom suits that face: ",
			"water-borne primer beads; pull test",
		]),
	}}
}

test_silent[name] if {
	some name, items in {
		"solvent-borne": [bench.sbs, _repellent, bench.solvent_primer],
		"coated steel": [
			bench.sbs,
			bench.item("substrate", "steel sleeve, epoxy-coated", "structural-steel", "substrate", ["carbon-steel"]),
			bench.water_primer,
		],
		"plain block": [bench.sbs, bench.block, bench.water_primer],
		"foam is another rule": [bench.sbs, bench.foam, bench.solvent_primer],
		"carrier not known": [bench.sbs, _repellent, bench.item("primer", "P-9", "", "primer", [])],
	}
	count(_found(items, [])) == 0
}
