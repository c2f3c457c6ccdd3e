package pairing.primer_asphaltic_test

import data.lib.bench_test as bench
import data.pairing.primer_asphaltic

_none := {"texts": {"primer": "none"}}

_found(items, more, products) := found if {
	found := primer_asphaltic.findings with input as bench.schedule(items, more, products)
}

test_fires if {
	_found([bench.sbs, bench.block], _none, []) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"severity": "error",
		"message": concat("", [
			`Asphaltic sheet FM-1 goes on CMU without primer (the primer cell says "none"); `,
			"such a sheet usually needs one there",
		]),
	}}
}

test_blank_cell_is_a_warning if {
	{f.severity | some f in _found([bench.sbs, bench.block], {}, [])} == {"warning"}
}

test_dusty_face_is_said if {
	found := _found([bench.sbs, bench.block], {"signals": [bench.said("dusty", "dusty")]}, [])
	{[f.severity, f.message] | some f in found} == {["error", concat("", [
		"Asphaltic sheet FM-1 goes on dusty CMU without primer (the primer cell is empty); ",
		"such a sheet usually needs one there",
	])]}
}

test_said_to_need_none_is_a_note if {
	found := _found([bench.sbs, bench.block], {"signals": [bench.said("primer_ok_without", "none required")]}, [])
	{f.severity | some f in found} == {"note"}
}

test_silent[name] if {
	data_of_it := bench.product("FM-1", {"accepts": [bench.accepts("any", ["metal"], "none", [])]})
	some name, case in {
		"clean face": {"items": [bench.sbs, bench.angle], "products": []},
		"primer is named": {"items": [bench.sbs, bench.block, bench.water_primer], "products": []},
		"the sheet has data": {"items": [bench.own(bench.sbs), bench.block], "products": [data_of_it]},
		"fluid": {"items": [bench.fluid, bench.block], "products": []},
		"substrate not known": {
			"items": [bench.sbs, bench.item("substrate", "wall", "", "", [])],
			"products": [],
		},
	}
	count(_found(case.items, _none, case.products)) == 0
}

# A primer that is still to be named is no primer; one left to the maker's words is another matter.
test_undecided[cell] if {
	some cell, want in {
		"TBD": {"warning"},
		"to be selected by the installer": {"warning"},
		"To be advised": {"warning"},
		"?": {"warning"},
		"P-1?": set(),
		"per maker": set(),
	}
	row := {"texts": {"primer": cell}, "signals": [bench.said("unknown", cell)]}
	{f.severity | some f in _found([bench.sbs, bench.block], row, [])} == want
}
