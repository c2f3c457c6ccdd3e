package contact.plasticizer_test

import data.contact.plasticizer
import data.lib.bench_test as bench

_rows := bench.pairs([bench.row("polystyrene", "pvc-plasticized", "incompatible", "plasticizer-migration", "error")])

_film := bench.end("touches", "SP-1", "polyethylene-sheet", "separator", ["polyethylene-film", "separator"])

_paper := bench.end("touches", "rosin paper", "rosin-paper", "separator", ["separator", "moisture-holding"])

_conduit := bench.end("touches", "conduit", "rigid-vinyl-window", "other", ["pvc-rigid"])

_separators := [
	{"id": "polyethylene-sheet", "stops": ["plasticizer-migration"], "partly": [], "does_not_stop": ["solvent-attack"]},
	{"id": "rosin-paper", "stops": ["adhesion-failure"], "partly": [], "does_not_stop": ["plasticizer-migration"]},
]

_found(contacts, products) := found if {
	found := plasticizer.findings with input as bench.document(contacts, products)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as _separators
}

test_fires if {
	_found([bench.contact(bench.sheet, bench.vinyl, {})], []) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "Plasticized PVC R-1 is in contact with asphaltic sheet FM-1, with no separator shown",
		"related": [],
		"facts": ["FM-1-R-1"],
	}}
}

test_foam_by_the_table if {
	some f in _found([bench.contact(bench.xps, bench.vinyl, {})], [])
	f.message == "Plasticized PVC R-1 is in contact with I-1 (xps), with no separator shown"
	f.source == "Some handbook (source-read)"
	f.remedy == "Some remedy."
}

test_silent[name] if {
	some name, contact in {
		"apart": bench.contact(bench.sheet, bench.vinyl, {"kind": "apart"}),
		"near with a gap": bench.contact(bench.sheet, bench.vinyl, {"kind": "near", "clear_mm": 40}),
		"film between": bench.contact(bench.sheet, bench.vinyl, {"kind": "separated", "separator": _film}),
		"unknown separator": bench.contact(bench.sheet, bench.vinyl, {"kind": "separated"}),
		"in the pocket": bench.contact(bench.sheet, bench.vinyl, {"signals": ["inside_pocket"]}),
		"embedded": bench.contact(bench.sheet, bench.vinyl, {"signals": ["embedded"]}),
		"rigid": bench.contact(bench.sheet, _conduit, {}),
		"on butyl": bench.contact(bench.butyl, bench.vinyl, {}),
		"struck row": bench.contact(bench.sheet, bench.vinyl, {"line": "W!14"}),
		"family not known": bench.contact(bench.sheet, bench.end("touches", "X-9", "", "", []), {}),
	}
	count(_found([contact], [])) == 0
}

test_the_makers_own_fleece_parts_them if {
	vinyl := object.union(bench.vinyl, {"product": "R-1"})
	fleece := object.union(_paper, {"product": "SF-2"})
	own := bench.contact(bench.sheet, vinyl, {"kind": "separated", "separator": fleece})
	count(_found([own], [bench.product("R-1", {"texts": {"keep_off": "asphalt (SF-2 between)"}})])) == 0
	count(_found([own], [bench.product("R-1", {"texts": {"keep_off": "asphalt (SF-3 between)"}})])) == 1
}

test_rosin_paper_does_not_stop_it if {
	some f in _found([bench.contact(bench.sheet, bench.vinyl, {"kind": "separated", "separator": _paper})], [])
	endswith(f.message, "asphaltic sheet FM-1; rosin paper between them does not stop that")
}

test_a_side_is_no_separator if {
	sheet := object.union(bench.sheet, {"product": "FM-1"})
	contact := bench.contact(sheet, bench.vinyl, {"kind": "separated", "separator": sheet})
	count(_found([contact], [])) == 0
}

test_own_data_is_named if {
	sheet := object.union(bench.sheet, {"product": "FM-1"})
	product := bench.product("FM-1", {"keep_off": [bench.target("plasticized PVC", ["pvc-plasticized"], [])]})
	some f in _found([bench.contact(sheet, bench.vinyl, {})], [product])
	endswith(f.message, `shown; the data of FM-1 says to keep off "plasticized PVC"`)
	f.related == [{"product": "FM-1", "cells": ["J4"], "what": "its data: keep off plasticized PVC"}]
}

test_own_data_allows if {
	sheet := object.union(bench.sheet, {"product": "FM-1"})
	allowed := object.union(bench.target("PVC roof sheet is fine", ["pvc-plasticized"], []), {"except": true})
	product := bench.product("FM-1", {"keep_off": [allowed]})
	count(_found([bench.contact(sheet, bench.vinyl, {})], [product])) == 0
}

test_letter_makes_a_note if {
	some f in _found([bench.contact(bench.sheet, bench.vinyl, {"signals": ["letter_on_file"]})], [])
	f.severity == "note"
	f.message == concat("", [
		"FM-1 (rubberized-asphalt-membrane) on R-1 (pvc-roof-membrane): ",
		"see that the letter or report the row tells of names both",
	])
}

test_letter_told_elsewhere_in_the_row if {
	doc := bench.document([bench.contact(bench.sheet, bench.vinyl, {})], [])
	line := bench.line("W!12", 12, {"signals": [bench.said("letter_on_file", "letter on file")]})
	found := plasticizer.findings with input as object.union(doc, {"lines": [line]})
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as _separators
	{f.severity | some f in found} == {"note"}
}

test_same_pair_twice_is_one if {
	again := bench.contact(bench.sheet, bench.vinyl, {"id": "again", "from": "remark"})
	count(_found([bench.contact(bench.sheet, bench.vinyl, {}), again], [])) == 1
}

test_two_rows_are_two if {
	other := bench.contact(bench.sheet, bench.vinyl, {"id": "other", "line": "W!13"})
	count(_found([bench.contact(bench.sheet, bench.vinyl, {}), other], [])) == 2
}
