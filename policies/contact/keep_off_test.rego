package contact.keep_off_test

import data.contact.keep_off
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("copper", "aluminum", "incompatible", "galvanic", "error"),
	bench.row("asphaltic", "acrylic", "compatible", "none", "note"),
])

_bead := bench.end("sealant", "S-5", "acrylic-latex-sealant", "sealant", ["acrylic", "water-borne"])

_sheet := object.union(bench.sheet, {"product": "FM-1"})

_barring := bench.product("FM-1", {"keep_off": [bench.target("latex caulk", ["acrylic-latex-sealant"], [])]})

_found(contacts, products) := found if {
	found := keep_off.findings with input as bench.document(contacts, products)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_sheet, _bead, {})], [_barring]) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "error",
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) is in contact with S-5 (acrylic-latex-sealant), ",
			`with no separator shown; the data of FM-1 says to keep off "latex caulk"`,
		]),
		"related": [{"product": "FM-1", "cells": ["J4"], "what": "its data: keep off latex caulk"}],
		"facts": ["FM-1-S-5"],
	}}
}

test_named_product_beats_kind if {
	sealant := object.union(_bead, {"product": "S-5"})
	listed := bench.product("S-5", {"suits": [bench.target("all FM sheets", [], ["FM-1"])]})
	count(_found([bench.contact(_sheet, sealant, {})], [_barring, listed])) == 0
}

# An exception lifts the list that it stands in, and nothing that the other side's data says.
test_exception_lifts_its_own_list if {
	lifted := bench.target("acrylic", ["acrylic"], [])
	excepting := bench.product("FM-1", {"keep_off": [
		bench.target("water-borne sealants", ["water-borne"], []),
		object.union(lifted, {"except": true}),
	]})
	sealant := object.union(_bead, {"product": "S-5"})
	barring := bench.product("S-5", {"keep_off": [bench.target("asphaltic sheets", ["asphaltic"], [])]})
	count(_found([bench.contact(_sheet, sealant, {})], [excepting])) == 0
	count(_found([bench.contact(_sheet, sealant, {})], [excepting, barring])) == 1
}

test_mechanism_tells_it_instead if {
	copper := object.union(bench.copper, {"product": "C-1"})
	product := bench.product("C-1", {"keep_off": [bench.target("aluminum", ["aluminum"], [])]})
	count(_found([bench.contact(copper, bench.aluminum, {})], [product])) == 0
}

test_solvent_sealants_are_not_primers if {
	primer := bench.end("touches", "P-1", "solvent-primer", "primer", ["solvent-borne"])
	product := bench.product("FM-1", {"keep_off": [bench.target("solvent-borne sealants", ["solvent-borne"], [])]})
	count(_found([bench.contact(_sheet, primer, {})], [product])) == 0
}

test_stone_is_no_brick if {
	bead := object.union(_bead, {"product": "S-5"})
	product := bench.product("S-5", {"keep_off": [bench.target("natural stone", ["stone", "porous-masonry"], [])]})
	brick := bench.end("material", "brick", "clay-brick", "masonry", ["clay-masonry", "porous-masonry"])
	marble := bench.end("material", "sill", "limestone-marble", "masonry", ["stone", "carbonate-stone", "porous-masonry"])
	count(_found([bench.contact(brick, bead, {})], [product])) == 0
	count(_found([bench.contact(marble, bead, {})], [product])) == 1
}

test_silent[name] if {
	some name, contact in {
		"said apart": bench.contact(_sheet, _bead, {"kind": "apart"}),
		"separated": bench.contact(_sheet, _bead, {"kind": "separated"}),
		"near": bench.contact(_sheet, _bead, {"kind": "near"}),
		"other material": bench.contact(_sheet, bench.xps, {}),
	}
	count(_found([contact], [_barring])) == 0
}

_plain := bench.end("material", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic"])

_loose := bench.product("S-5", {"keep_off": [bench.target("polyethylene (no adhesion)", ["polyethylene-film"], [])]})

_hybrid := object.union(_bead, {"product": "S-5"})

test_bead_on_the_film_of_a_sheet if {
	some f in _found([bench.contact(_sheet, _hybrid, {})], [_loose])
	endswith(f.message, `the data of S-5 says to keep off "polyethylene (no adhesion)"`)
	count(_found([bench.contact(_plain, _hybrid, {})], [_loose])) == 0
}

# _beneath is what is found where the row primes the film with P-9, whose data takes some face.
_beneath(keys) := found if {
	primer := object.union(bench.item("primer", "P-9", "primer-unspecified", "primer", []), {"product": "P-9"})
	takes := bench.product("P-9", {"suits": [bench.target("face", keys, [])]})
	doc := bench.document([bench.contact(_sheet, _hybrid, {})], [_loose, takes])
	lines := [object.union(line, {"items": [primer]}) | some line in doc.lines]
	found := keep_off.findings with input as object.union(doc, {"lines": lines})
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_primer_for_the_film if count(_beneath(["polyethylene-film"])) == 0

test_primer_for_another_face if count(_beneath(["clay-brick"])) == 1
