package pairing.bond_test_test

import data.lib.bench_test as bench
import data.pairing.bond_test

_treated := bench.item("substrate", "FRT plywood", "frt-lumber", "lumber", ["wood", "fire-retardant-salts"])

_found(items) := found if {
	found := bond_test.findings with input as bench.schedule(items, {}, [])
}

test_fires if {
	_found([bench.butyl_tape, _treated]) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": "Butyl sheet FM-3 goes on FRT plywood: ask for a pull test there",
	}}
}

test_asked_once if {
	doc := bench.schedule([bench.butyl_tape, _treated], {}, [])
	second := object.union(doc.lines[0], {"id": "W!13", "row": 13})
	found := bond_test.findings with input as object.union(doc, {"lines": [doc.lines[0], second]})
	{[f.line, f.message] | some f in found} == {[
		"W!12",
		"Butyl sheet FM-3 goes on FRT plywood: ask for a pull test there (and in 1 more)",
	]}
}

test_silent_on_plywood if count(_found([bench.butyl_tape, bench.plywood])) == 0
