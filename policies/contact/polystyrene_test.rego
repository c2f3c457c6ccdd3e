package contact.polystyrene_test

import data.contact.polystyrene
import data.lib.bench_test as bench

_rows := bench.pairs([
	object.union(
		bench.row("solvent-borne", "polystyrene", "incompatible", "solvent-attack", "error"),
		{"state": "uncured"},
	),
	object.union(
		bench.row("water-borne", "polystyrene", "compatible", "none", "note"),
		{"state": "any"},
	),
])

_adhesive := bench.end("touches", "panel adhesive", "construction-adhesive-solvent", "mastic", ["solvent-borne"])

_foam_safe := bench.end("touches", "foam-safe adhesive", "foam-compatible-adhesive", "mastic", ["water-borne"])

_found(contacts) := found if {
	found := polystyrene.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.xps, _adhesive, {})]) == {{
		"line": "W!12",
		"cells": ["E12", "G12"],
		"severity": "error",
		"message": "Panel adhesive is in contact with polystyrene foam I-1, with no separator shown",
		"related": [],
		"facts": ["I-1-panel adhesive"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_primer_in_a_row_of_foam if {
	primer := bench.end("primer", "P-1", "solvent-primer", "primer", ["solvent-borne"])
	contact := bench.contact(bench.xps, primer, {"from": "primer"})
	doc := bench.document([contact], [])
	foam := object.union(doc, {"lines": [bench.line("W!12", 12, {"role": "insulation"})]})
	found := polystyrene.findings with input as foam
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
	count(found) == 1
}

test_silent[name] if {
	primer := bench.end("primer", "P-1", "solvent-primer", "primer", ["solvent-borne"])
	some name, contact in {
		"water-borne": bench.contact(bench.xps, _foam_safe, {}),
		"primer is judged with its substrate": bench.contact(bench.xps, primer, {"from": "primer"}),
		"dry goods with solvent once": bench.contact(
			bench.xps,
			bench.end("touches", "board", "", "other", ["solvent-borne"]),
			{},
		),
	}
	count(_found([contact])) == 0
}

_hot(words, keys) := found if {
	sheet := bench.item("material", "HR-1", "hot-rubberized-asphalt-waterproofing", "membrane", keys)
	foam := bench.item("touches", "EPS", "eps", "insulation", ["polystyrene"])
	line := bench.line("W!12", 12, {"role": "membrane", "items": [sheet, foam], "texts": {"touches": words}})
	found := polystyrene.findings with input as object.union(bench.document([], []), {"lines": [line]})
}

test_foam_into_the_hot_membrane if {
	some words in ["EPS laid into the hot rubber", "EPS set before the membrane cools"]
	count(_hot(words, ["hot-applied"])) == 1
}

test_foam_on_the_cold_membrane[name] if {
	some name, case in {
		"cooled": ["EPS laid once the hot rubber has cooled", ["hot-applied"]],
		"nothing of heat": ["EPS over the board", ["hot-applied"]],
		"a cold coat": ["EPS laid into the hot rubber", ["asphaltic"]],
	}
	count(_hot(case[0], case[1])) == 0
}
