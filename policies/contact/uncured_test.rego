package contact.uncured_test

import data.contact.uncured
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("polyurethane", "uncured-cement", "incompatible", "outgassing", "warning"),
	object.union(
		bench.row("silicone-neutral-cure", "polyurethane", "needs-confirmation", "cure-inhibition", "warning"),
		{"state": "uncured", "confidence": 0.7},
	),
])

_urethane := bench.end("sealant", "S-4", "polyurethane-sealant", "sealant", ["polyurethane"])

_silicone := bench.end("touches", "S-1", "neutral-silicone-sealant", "sealant", ["silicone-neutral-cure"])

_mortar := bench.end("touches", "green mortar", "fresh-mortar", "masonry", ["uncured-cement"])

_found(contacts) := found if {
	found := uncured.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_urethane, _mortar, {})]) == {{
		"line": "W!12",
		"cells": ["G12", "H12"],
		"severity": "warning",
		"message": "S-4 (polyurethane-sealant) goes on against fresh green mortar",
		"related": [],
		"facts": ["S-4-green mortar"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_two_fresh_beads_are_a_question if {
	{f.severity | some f in _found([bench.contact(_urethane, _silicone, {})])} == {"note"}
}

test_silent_apart if count(_found([bench.contact(_urethane, _mortar, {"kind": "apart"})])) == 0
