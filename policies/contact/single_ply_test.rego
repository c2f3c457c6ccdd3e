package contact.single_ply_test

import data.contact.single_ply
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("asphalt-cutback", "tpo", "incompatible", "solvent-attack", "warning"),
	bench.row("asphaltic", "tpo", "needs-confirmation", "oil-migration", "warning"),
])

_tpo := bench.end("touches", "R-2", "tpo-membrane", "roofing", ["tpo", "polyolefin"])

_cement := bench.end("material", "roof cement", "asphalt-cutback-mastic", "mastic", ["asphaltic", "asphalt-cutback"])

_found(contacts) := found if {
	found := single_ply.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_cement, _tpo, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "warning",
		"message": "Roof cement is in contact with roof sheet R-2, with no separator shown",
		"related": [],
		"facts": ["roof cement-R-2"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_disputed_pair_is_a_question if {
	some f in _found([bench.contact(bench.sheet, _tpo, {})])
	f.severity == "note"
	f.message == concat("", [
		"FM-1 (rubberized-asphalt-membrane) meets R-2 (tpo-membrane): ",
		"ask both makers in writing (some condition)",
	])
}

test_question_is_asked_once if {
	other := bench.contact(bench.sheet, _tpo, {"id": "other", "line": "W!13"})
	found := _found([bench.contact(bench.sheet, _tpo, {}), other])
	count(found) == 1
	some f in found
	endswith(f.message, "(some condition) (and in 1 more row)")
	some r in f.related
	r.line == "W!13"
}

test_silent_on_butyl if count(_found([bench.contact(bench.butyl, _tpo, {})])) == 0
