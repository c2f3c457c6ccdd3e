package contact.coal_tar_test

import data.contact.coal_tar
import data.lib.bench_test as bench

_tar := bench.end("substrate", "old dampproofing, coal-tar pitch", "coal-tar-pitch", "roofing", ["coal-tar"])

_bare_tar := bench.end("substrate", "DP-1", "coal-tar-pitch", "roofing", ["coal-tar"])

_rows := bench.pairs([bench.row("coal-tar", "polystyrene", "incompatible", "solvent-attack", "error")])

_found(contacts) := found if {
	found := coal_tar.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.sheet, _tar, {"from": "substrate"})]) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "G12"],
		"severity": "error",
		"message": concat("", [
			"Asphaltic sheet FM-1 is in contact with old dampproofing, coal-tar pitch, ",
			"with no separator shown",
		]),
		"related": [],
		"facts": ["FM-1-old dampproofing, coal-tar pitch"],
	}}
}

test_tag_gets_its_noun if {
	some f in _found([bench.contact(bench.sheet, _bare_tar, {})])
	f.message == "Asphaltic sheet FM-1 is in contact with coal tar DP-1, with no separator shown"
}

test_bedded_in_tar_is_contact if {
	count(_found([bench.contact(bench.sheet, _tar, {"signals": ["embedded"]})])) == 1
}

test_gravel_taken_off_leaves_the_tar if {
	count(_found([bench.contact(bench.sheet, _tar, {"signals": ["removed"]})])) == 1
}

test_foam_by_the_table if {
	count(_found([bench.contact(bench.xps, _tar, {})])) == 1
}

test_silent[name] if {
	some name, contact in {
		"three feet away": bench.contact(bench.sheet, _tar, {"kind": "near", "clear_mm": 914}),
		"taken off": bench.contact(bench.sheet, _tar, {"kind": "apart", "signals": ["removed"]}),
		"asphalt felt": bench.contact(
			bench.sheet,
			bench.end("touches", "tar paper", "asphalt-felt", "membrane", ["asphaltic"]),
			{},
		),
	}
	count(_found([contact])) == 0
}
