package pairing.parge_first_test

import data.lib.bench_test as bench
import data.pairing.parge_first

_split := object.union(bench.block, {"text": "split-face CMU"})

_found(items, products) := found if {
	found := parge_first.findings with input as bench.schedule(items, {}, products)
}

test_fires if {
	_found([bench.sbs, _split], []) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": "Asphaltic sheet FM-1 goes straight on split-face CMU, which such a sheet bridges; no parging is shown",
	}}
}

test_silent_on_plain_block if count(_found([bench.sbs, bench.block], [])) == 0

test_silent_where_its_data_speaks if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("CMU", ["concrete-masonry"], "always", [])]})
	count(_found([bench.own(bench.sbs), _split], [product])) == 0
}

test_silent_for_fluid if count(_found([bench.fluid, _split], [])) == 0
