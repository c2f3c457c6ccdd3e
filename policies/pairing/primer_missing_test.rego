package pairing.primer_missing_test

import data.lib.bench_test as bench
import data.pairing.primer_missing

_product := bench.product("FM-1", {"accepts": [
	bench.accepts("CMU, GMGS", ["concrete-masonry", "gypsum"], "listed", ["P-1", "P-2"]),
	bench.accepts("clean metal", ["metal"], "none", []),
]})

_found(items, more) := found if {
	found := primer_missing.findings with input as bench.schedule(items, more, [_product])
}

_dash := {"texts": {"primer": "-"}}

test_fires if {
	_found([bench.own(bench.sbs), bench.glass_mat], _dash) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"message": concat("", [
			`FM-1 (rubberized-asphalt-membrane) goes on GMGS without primer (the primer cell says "-"), `,
			"but its data asks for P-1 or P-2 there",
		]),
		"related": [{"product": "FM-1", "cells": ["I4"], "what": "its data on substrates and primers"}],
		"facts": ["W!12/FM-1", "W!12/GMGS"],
	}}
}

test_no_primer_in_the_remark if {
	found := _found([bench.own(bench.sbs), bench.block], {"signals": [bench.said("primer_none", "no primer here")]})
	{f.message | some f in found} == {concat("", [
		"FM-1 (rubberized-asphalt-membrane) goes on CMU without primer (the row says no primer), ",
		"but its data asks for P-1 or P-2 there",
	])}
}

test_the_remark_tells_of_the_primer_that_ran_out if {
	named := object.union(bench.solvent_primer, {"slot": "remark", "product": ""})
	more := {"texts": {"primer": "none"}, "signals": [bench.said("primer_none", "ran out of primer")]}
	count(_found([bench.own(bench.sbs), bench.block, named], more)) == 1
}

test_a_substrate_of_two_sheets_is_told_once if {
	strip := object.union(bench.own(bench.sbs), {"slot": "with", "id": "W!12/strip"})
	found := _found([bench.own(bench.sbs), strip, bench.glass_mat], _dash)
	{f.message | some f in found} == {concat("", [
		`FM-1 (rubberized-asphalt-membrane) goes on GMGS without primer (the primer cell says "-"), `,
		"but its data asks for P-1 or P-2 there",
	])}
}

test_one_of_two_substrates if {
	count(_found([bench.own(bench.sbs), bench.angle, bench.block], _dash)) == 1
}

test_silent[name] if {
	some name, case in {
		"none on sheet of its own kind": {
			"items": [bench.own(bench.sbs), bench.block],
			"more": {"texts": {"primer": "not needed, sheet to sheet"}},
		},
		"data asks for none there": {"items": [bench.own(bench.sbs), bench.angle], "more": _dash},
		"primer is named": {"items": [bench.own(bench.sbs), bench.block, bench.solvent_primer], "more": {}},
		"primer named, remark denies it": {
			"items": [bench.own(bench.sbs), bench.block, bench.solvent_primer],
			"more": {"signals": [bench.said("primer_none", "no primer")]},
		},
		"primed earlier": {
			"items": [bench.own(bench.sbs), bench.block],
			"more": {"signals": [bench.said("primed_earlier", "primed before"), bench.said("primer_none", "none")]},
		},
		"words not understood": {
			"items": [bench.own(bench.sbs), bench.block],
			"more": {"texts": {"primer": "per maker"}},
		},
		"face not on the list": {"items": [bench.own(bench.sbs), bench.plywood], "more": _dash},
		"no data": {"items": [bench.sbs, bench.block], "more": _dash},
		"lap onto a sheet": {
			"items": [bench.own(bench.sbs), object.union(bench.sbs, {"slot": "substrate"})],
			"more": _dash,
		},
		"struck": {
			"items": [bench.own(bench.sbs), bench.block],
			"more": object.union(_dash, {"struck": true}),
		},
	}
	count(_found(case.items, case.more)) == 0
}

test_star_means_every_substrate if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("", ["*"], "listed", ["P-1"])]})
	found := primer_missing.findings with input as bench.schedule(
		[bench.own(bench.sbs), bench.plywood],
		_dash,
		[product],
	)
	count(found) == 1
}

test_all_substrates if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("all substrates", [], "always", [])]})
	found := primer_missing.findings with input as bench.schedule(
		[bench.own(bench.sbs), bench.plywood],
		_dash,
		[product],
	)
	{endswith(f.message, "its data asks for a primer there") | some f in found} == {true}
}

# A sheet named beside the row's own goes on the same substrate.
test_another_sheet_of_the_row_asks if {
	other := object.union(bench.own(bench.sbs), {"id": "W!12/8", "slot": "with"})
	{f.message | some f in _found([bench.butyl_tape, other, bench.glass_mat], _dash)} == {concat("", [
		`FM-1 (rubberized-asphalt-membrane) goes on GMGS without primer (the primer cell says "-"), `,
		"but its data asks for P-1 or P-2 there",
	])}
}

# A metal flashing with an adhesive back, whose data names primers; on metal its data asks for none.
test_metal_with_an_adhesive[bed.text] if {
	some bed, n in {bench.block: 1, bench.angle: 0}
	copper := bench.item("material", "FM-1", "copper-sheet", "flashing-metal", ["copper", "metal"])
	metal := object.union(copper, {"product": "FM-1"})
	count(_found([bench.own(metal), bed], object.union(_dash, {"role": "metal"}))) == n
}

# How a field list shortens "none required"; what it says of one face only is left alone.
test_none_in_short[said] if {
	some said, n in {"None reqd": 1, "not reqd; pull 19 psi": 1, "none reqd on painted steel; wiped": 0, "reqd": 0}
	count(_found([bench.own(bench.sbs), bench.block], {"texts": {"primer": said}})) == n
}

test_other_words_for_none[words] if {
	some words, n in {"nothing needed": 1, "requires none": 1, "nothing that is not listed": 0}
	count(_found([bench.own(bench.sbs), bench.block], {"texts": {"primer": words}})) == n
}

# A primer that goes on what the sheet touches primes no bed; one for the bed does.
test_primer_of_another_face if {
	other := object.union(bench.own(bench.solvent_primer), {"primes": "J12"})
	more := {"texts": {"primer": "none on block, P-1 to the roof sheet"}, "signals": [bench.said("primer_none", "none")]}
	{f.line | some f in _found([bench.own(bench.sbs), bench.block, other], more)} == {"W!12"}
	own := object.union(other, {"primes": bench.block.at.cell})
	count(_found([bench.own(bench.sbs), bench.block, own], more)) == 0
}
