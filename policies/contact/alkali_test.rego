package contact.alkali_test

import data.contact.alkali
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("aluminum", "uncured-cement", "incompatible", "alkali-attack", "error"),
	bench.row("aluminum", "cement-based", "needs-confirmation", "alkali-attack", "warning"),
	bench.row("copper", "cement-based", "compatible", "none", "note"),
])

_mortar := bench.end("touches", "fresh mortar", "fresh-mortar", "masonry", ["cement-based", "uncured-cement"])

_old := bench.end("touches", "concrete", "cast-concrete", "substrate", ["cement-based"])

_flashing := bench.end("material", "A-2", "aluminum-sheet", "flashing-metal", ["aluminum", "metal"])

_found(contacts) := found if {
	found := alkali.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_flashing, _mortar, {"wet": true})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "A-2 (aluminum-sheet) is in contact with fresh mortar, with no separator shown",
		"related": [],
		"facts": ["A-2-fresh mortar"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_embedded_in_mortar_is_the_harm if {
	count(_found([bench.contact(_flashing, _mortar, {"signals": ["embedded"]})])) == 1
}

test_silent[name] if {
	some name, contact in {
		"cured concrete": bench.contact(_flashing, _old, {}),
		"copper": bench.contact(bench.copper, _mortar, {}),
		"on shims": bench.contact(_flashing, _mortar, {"kind": "apart"}),
	}
	count(_found([contact])) == 0
}

_painted := bench.end("material", "A-5", "painted-aluminum", "flashing-metal", ["aluminum", "organic-coated", "metal"])

_signed(said) := object.union(doc, {"lines": lines}) if {
	doc := bench.document([bench.contact(_painted, _mortar, {})], [])
	lines := [object.union(line, {"signals": said}) | some line in doc.lines]
}

_bare(cell, no) := {
	"id": "bare_metal",
	"no": no,
	"text": "bare back",
	"slot": "material",
	"at": {"sheet": "W", "row": 12, "cell": cell},
}

# Painted aluminum in mortar is a question, and a harm where its own cell calls it bare.
test_paint_that_is_not_there[name] if {
	painted := bench.row("painted-aluminum", "uncured-cement", "needs-confirmation", "alkali-attack", "warning")
	rows := bench.pairs([painted])
	some name, case in {
		"bare back": [[_bare("C12", false)], {"warning"}],
		"not bare": [[_bare("C12", true)], {"note"}],
		"bare block behind": [[_bare("F12", false)], {"note"}],
		"nothing said": [[], {"note"}],
	}
	found := alkali.findings with input as _signed(case[0])
		with data.knowledge.pairs as rows
		with data.knowledge.separators as []
	{f.severity | some f in found} == case[1]
}
