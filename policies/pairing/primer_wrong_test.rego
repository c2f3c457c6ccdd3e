package pairing.primer_wrong_test

import data.lib.bench_test as bench
import data.pairing.primer_wrong

_sheet := bench.product("FM-1", {"accepts": [
	bench.accepts("CMU", ["concrete-masonry"], "listed", ["P-1", "P-2"]),
	bench.accepts("polystyrene foam", ["polystyrene"], "listed", ["P-2"]),
]})

_primers := [
	bench.product("FM-3", {"role": "membrane"}),
	bench.product("P-1", {"suits": [bench.target("FM-1", [], ["FM-1"])]}),
	bench.product("P-2", {}),
	bench.product("P-4", {"suits": [bench.target("FM-3 and FM-5 only", [], ["FM-3", "FM-5"])]}),
]

_found(items, products) := found if {
	found := primer_wrong.findings with input as bench.schedule(items, {}, array.concat(products, _primers))
}

test_fires if {
	_found([bench.own(bench.sbs), bench.block, bench.own(bench.butyl_primer)], [_sheet]) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"message": concat("", [
			"P-4 is put under FM-1 (rubberized-asphalt-membrane) on CMU, ",
			"but its data takes P-1 or P-2 there",
		]),
		"related": [{"product": "FM-1", "cells": ["I4"], "what": "its data"}],
	}}
}

test_primer_is_for_other_sheets if {
	found := _found([bench.sbs, bench.block, bench.own(bench.butyl_primer)], [])
	{f.message | some f in found} == {concat("", [
		"P-4 is put under FM-1 (rubberized-asphalt-membrane) on CMU, ",
		`but the data of P-4 is for "FM-3 and FM-5 only"`,
	])}
}

test_primer_bars_the_sheet if {
	acrylic := bench.own(bench.item("primer", "P-3", "", "primer", ["water-borne"]))
	product := bench.product("P-3", {"keep_off": [bench.target("asphaltic sheets", ["asphaltic"], [])]})
	found := _found([bench.sbs, bench.block, acrylic], [product])
	{f.message | some f in found} == {concat("", [
		"P-3 is put under FM-1 (rubberized-asphalt-membrane) on CMU, ",
		`but the data of P-3 says to keep it off "asphaltic sheets"`,
	])}
}

_on_zinc(keys, text) := _barred_on(bench.angle, keys, text)

_barred_on(under, keys, text) := _found([bench.sbs, under, primer], [product]) if {
	primer := bench.own(bench.item("primer", "P-6", "water-primer", "primer", ["water-borne"]))
	off := object.union(bench.target(text, keys, []), {"at": {"sheet": "P", "row": 4, "cell": "J4"}})
	product := bench.product("P-6", {"keep_off": [off], "texts": {"keep_off": text}})
}

test_primer_bars_the_metal if {
	found := _on_zinc(["galvanized-sheet", "zinc-coated"], "zinc-coated steel")
	{f.message | some f in found} == {concat("", [
		"P-6 is put under FM-1 (rubberized-asphalt-membrane) on Z-1, ",
		`but the data of P-6 says to keep it off "zinc-coated steel"`,
	])}
}

test_primer_bars_a_state_of_the_metal if count(_on_zinc(["galvanized-sheet"], "oily galvanized")) == 0

# A face by its own name, and not one that is barred in a state or as a kind.
test_primer_bars_the_face if {
	mat := ["glass-mat-gypsum-sheathing", "gypsum"]
	{f.message | some f in _barred_on(bench.glass_mat, mat, "glass-faced board")} == {concat("", [
		"P-6 is put under FM-1 (rubberized-asphalt-membrane) on GMGS, ",
		`but the data of P-6 says to keep it off "glass-faced board"`,
	])}
	count(_barred_on(bench.glass_mat, mat, "wet glass-faced board")) == 0
	count(_barred_on(bench.glass_mat, ["gypsum-board", "gypsum"], "drywall")) == 0
	count(_barred_on(bench.block, ["concrete-masonry", "cement-based"], "block")) == 0
}

test_primer_bars_another_metal if count(_on_zinc(["structural-steel", "zinc-coated"], "raw steel")) == 0

test_silent[name] if {
	some name, items in {
		"listed": [bench.own(bench.sbs), bench.block, bench.own(bench.solvent_primer)],
		"one of two fits": [
			bench.own(bench.sbs),
			bench.block,
			bench.own(bench.butyl_primer),
			bench.own(bench.water_primer),
		],
		"foam has a rule of its own": [bench.own(bench.sbs), bench.foam, bench.own(bench.solvent_primer)],
		"tag without data": [bench.own(bench.sbs), bench.block, bench.item("primer", "P-9", "", "primer", [])],
		"no primer": [bench.own(bench.sbs), bench.block],
	}
	count(_found(items, [_sheet])) == 0
}

# A primer that the cell of the substrate tells, where the primer cell says none, is of the work below.
test_primer_below_is_no_other if {
	below := object.union(bench.own(bench.butyl_primer), {"slot": "substrate"})
	items := [bench.own(bench.sbs), bench.block, below]
	products := array.concat([_sheet], _primers)
	silent := primer_wrong.findings with input as bench.schedule(items, {"texts": {"primer": "none"}}, products)
	count(silent) == 0
	told := primer_wrong.findings with input as bench.schedule(items, {}, products)
	count(told) == 1
}

test_listed_by_the_sheet_beats_the_primers_list if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("CMU", ["concrete-masonry"], "listed", ["P-4"])]})
	count(_found([bench.own(bench.sbs), bench.block, bench.own(bench.butyl_primer)], [product])) == 0
}

# A primer for each side: one for the block, one for the angle, which its data keeps off metal.
_sided := {
	"block": object.union(bench.block, {"at": {"sheet": "W", "row": 12, "cell": "D12"}}),
	"angle": object.union(bench.angle, {"at": {"sheet": "W", "row": 12, "cell": "F12"}}),
	"first": object.union(bench.own(bench.water_primer), {"primes": "D12"}),
	"second": object.union(bench.own(bench.water_primer), {
		"primes": "F12",
		"at": {"sheet": "W", "row": 12, "cell": "G12"},
	}),
	"other": object.union(bench.own(bench.solvent_primer), {"primes": "F12"}),
}

_by_side(primers, metal) := found if {
	items := array.concat([bench.own(bench.sbs), _sided.block, _sided.angle], primers)
	found := primer_wrong.findings with input as bench.schedule(items, {}, [
		bench.product("FM-1", {"accepts": [
			bench.accepts("block", ["concrete-masonry"], "always", []),
			bench.accepts("metal", ["metal"], metal, []),
		]}),
		bench.product("P-1", {}),
		bench.product("P-2", {"keep_off": [bench.target("coated metal", ["metal"], [])]}),
	])
}

test_primer_of_one_side if {
	found := _by_side([_sided.first, _sided.second], "none")
	{f.message | some f in found} == {concat("", [
		"P-2 is put under FM-1 (rubberized-asphalt-membrane) on Z-1, ",
		`but the data of P-2 says to keep it off "coated metal"`,
	])}
	{cell | some f in found; some cell in f.cells} & {"G12", "F12"} == {"G12", "F12"}
}

test_silent_where_each_side_has_its_own if count(_by_side([_sided.first, _sided.other], "always")) == 0

# The one primer of the row is for the block, where the metal takes none.
test_one_primer_of_two_faces if {
	one := object.remove(_sided.first, ["primes"])
	count(_by_side([one], "none")) == 0
	count(_by_side([one], "always")) == 1
}

test_primer_of_the_joints if {
	joint := object.union(bench.own(bench.butyl_primer), {"clause": "P-4 in coping joints"})
	count(_found([bench.own(bench.sbs), bench.block, joint], [_sheet])) == 0
}

# Metal with an adhesive back is primed for as a sheet is; metal without a list of primers is not judged.
test_backed_metal[name] if {
	some name, tc in {
		"a list, and another primer": {"accepts": [_list_of("P-4")], "role": "metal", "want": 1},
		"its own primer": {"accepts": [_list_of("P-2")], "role": "metal", "want": 0},
		"no list": {"accepts": [], "role": "metal", "want": 0},
		"a bead": {"accepts": [_list_of("P-4")], "role": "sealant", "want": 0},
	}
	drip := bench.own(bench.item("material", "Z-9", "stainless-sheet", "flashing-metal", ["stainless", "metal"]))
	doc := bench.schedule([drip, bench.block, bench.own(bench.water_primer)], {"role": tc.role}, [
		bench.product("Z-9", {"accepts": tc.accepts}),
		bench.product("P-2", {}),
	])
	count(primer_wrong.findings) == tc.want with input as doc
}

_list_of(primer) := bench.accepts("CMU", ["concrete-masonry"], "listed", [primer])

test_two_primers_are if {
	acrylic := bench.own(bench.item("primer", "P-5", "water-primer", "primer", ["water-borne"]))
	items := [bench.own(bench.sbs), bench.block, bench.own(bench.butyl_primer), acrylic]
	found := _found(items, [_sheet, bench.product("P-5", {})])
	{f.message | some f in found} == {concat("", [
		"P-4 and P-5 are put under FM-1 (rubberized-asphalt-membrane) on CMU, ",
		"but its data takes P-1 or P-2 there",
	])}
}
