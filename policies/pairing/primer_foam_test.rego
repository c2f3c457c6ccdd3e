package pairing.primer_foam_test

import data.lib.bench_test as bench
import data.pairing.primer_foam

_sheet := bench.product("FM-1", {"accepts": [
	bench.accepts("CMU, polystyrene foam", ["concrete-masonry", "polystyrene"], "listed", ["P-1", "P-2"]),
	object.union(bench.accepts("foam: P-2 only", ["polystyrene"], "listed", ["P-2"]), {"only": true}),
]})

_found(items, products) := found if {
	found := primer_foam.findings with input as bench.schedule(items, {}, products)
}

test_fires if {
	_found([bench.sbs, bench.foam, bench.solvent_primer], []) == {{
		"line": "W!12",
		"cells": ["E12", "F12"],
		"message": "Solvent-borne primer P-1 goes on I-1 edge, and its solvent dissolves polystyrene",
		"facts": ["W!12/P-1", "W!12/I-1 edge"],
	}}
}

test_data_names_the_right_one if {
	found := _found([bench.own(bench.sbs), bench.block, bench.foam, bench.own(bench.solvent_primer)], [_sheet])
	{f.message | some f in found} == {concat("", [
		"Solvent-borne primer P-1 goes on I-1 edge, and its solvent dissolves polystyrene; ",
		"the data of FM-1 takes P-2 there",
	])}
}

test_silent[name] if {
	some name, items in {
		"water-borne": [bench.sbs, bench.foam, bench.water_primer],
		"one for each face": [bench.sbs, bench.block, bench.foam, bench.solvent_primer, bench.water_primer],
		"no foam": [bench.sbs, bench.block, bench.solvent_primer],
		"foam beside, not under": [
			bench.sbs,
			bench.block,
			object.union(bench.foam, {"slot": "touches"}),
			bench.solvent_primer,
		],
		"foam said not to be there": [bench.sbs, object.union(bench.foam, {"polarity": "no"}), bench.solvent_primer],
		"no primer": [bench.sbs, bench.foam],
	}
	count(_found(items, [])) == 0
}

# A list for every face names no foam, and clears no solvent on it; a list that names the foam does.
test_list_that_names_no_foam[keys] if {
	some keys, want in {["*"]: 1, ["concrete-masonry"]: 1, ["polystyrene"]: 0}
	product := bench.product("FM-1", {"accepts": [bench.accepts("", keys, "listed", ["P-1", "P-2"])]})
	items := [bench.own(bench.sbs), bench.block, bench.foam, bench.own(bench.solvent_primer)]
	count(_found(items, [product])) == want
}
