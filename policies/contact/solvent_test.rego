package contact.solvent_test

import data.contact.solvent
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("solvent-borne", "stress-crack-prone", "incompatible", "stress-cracking", "error"),
	bench.row("butyl", "aluminum", "compatible", "none", "note"),
])

_found(contacts, products) := found if {
	found := solvent.findings with input as bench.document(contacts, products)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

_stpe := bench.end("sealant", "S-2", "hybrid-sealant", "sealant", ["polyether-hybrid"])

_primer := bench.end("primer", "P-1", "solvent-primer", "primer", ["solvent-borne", "asphalt-cutback"])

test_fires if {
	_found([bench.contact(bench.sheet, bench.solvent_sealant, {})], []) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "error",
		"message": concat("", [
			"Solvent-borne sealant S-3 is in contact with asphaltic sheet FM-1, ",
			"with no separator shown",
		]),
		"related": [],
		"facts": ["FM-1-S-3"],
	}}
}

test_cutback_mastic if {
	words := "cut-back mastic, mineral spirits"
	traits := ["asphaltic", "asphalt-cutback", "solvent-borne"]
	mastic := bench.end("sealant", words, "asphalt-cutback-mastic", "mastic", traits)
	some f in _found([bench.contact(bench.sheet, mastic, {})], [])
	f.message == concat("", [
		"Cut-back mastic, mineral spirits is in contact with asphaltic sheet FM-1, ",
		"with no separator shown",
	])
}

test_clear_plastic_by_the_table if {
	panel := bench.end("material", "polycarbonate panel", "polycarbonate-acrylic-glazing", "other", ["stress-crack-prone"])
	some f in _found([bench.contact(panel, bench.solvent_sealant, {})], [])
	f.message == concat("", [
		"Solvent-borne sealant S-3 is in contact with polycarbonate panel, ",
		"with no separator shown",
	])
}

test_silent[name] if {
	some name, contact in {
		"solvent-free": bench.contact(bench.sheet, _stpe, {}),
		"metal to metal": bench.contact(bench.aluminum, bench.solvent_sealant, {}),
		"metal to metal, said in the row of a sheet": bench.contact(
			bench.sheet,
			bench.solvent_sealant,
			{"signals": ["metal_to_metal"]},
		),
		"primer under its sheet": bench.contact(bench.sheet, _primer, {"from": "primer"}),
		"clear of the sheet": bench.contact(bench.sheet, bench.solvent_sealant, {"kind": "near", "clear_mm": 150}),
	}
	count(_found([contact], [])) == 0
}

test_remark_says_that_it_is_away_from_the_sheet if {
	remark := bench.contact(bench.sheet, bench.solvent_sealant, {"id": "remark", "kind": "apart", "from": "remark"})
	count(_found([bench.contact(bench.sheet, bench.solvent_sealant, {}), remark], [])) == 0
}

test_remark_of_another_row_says_nothing_here if {
	away := {"id": "remark", "kind": "apart", "from": "remark", "line": "W!13"}
	remark := bench.contact(bench.sheet, bench.solvent_sealant, away)
	count(_found([bench.contact(bench.sheet, bench.solvent_sealant, {}), remark], [])) == 1
}
