package contact.other_test

import data.contact.other
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("zinc-coated", "chloride-bearing", "incompatible", "chloride-attack", "warning"),
	object.union(
		bench.row("zinc-coated", "gypsum", "incompatible", "corrosion", "error"),
		{"confidence": 0.62},
	),
])

_track := bench.end("material", "track", "steel-stud-framing", "substrate", ["zinc-coated", "metal"])

_board := bench.end("touches", "MgO board", "magnesium-oxide-board", "substrate", ["chloride-bearing"])

_gypsum := bench.end("touches", "gypsum", "glass-mat-gypsum-sheathing", "substrate", ["gypsum"])

_found(contacts) := found if {
	found := other.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_track, _board, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "warning",
		"message": "Track is in contact with MgO board, with no separator shown: some condition",
		"reason": "Some condition.",
		"related": [],
		"facts": ["track-MgO board"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_condition_that_points_elsewhere_gives_the_mechanism if {
	as_above := bench.pairs([object.union(
		bench.row("zinc-coated", "chloride-bearing", "incompatible", "chloride-attack", "warning"),
		{"condition": "As above."},
	)])
	found := other.findings with input as bench.document([bench.contact(_track, _board, {})], [])
		with data.knowledge.pairs as as_above
		with data.knowledge.separators as []
	{f.message | some f in found} == {"Track is in contact with MgO board, with no separator shown: chloride attack"}
}

test_low_confidence_is_a_note if {
	{f.severity | some f in _found([bench.contact(_track, _gypsum, {})])} == {"note"}
}

test_no_row_says_nothing if count(_found([bench.contact(_board, _gypsum, {})])) == 0
