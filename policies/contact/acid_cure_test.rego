package contact.acid_cure_test

import data.contact.acid_cure
import data.lib.bench_test as bench

_rows := bench.pairs([
	object.union(
		bench.row("silicone-acetoxy", "copper", "incompatible", "acid-attack", "error"),
		{"state": "uncured"},
	),
	bench.row("silicone-acetoxy", "glass", "compatible", "none", "note"),
])

_bead := bench.end("sealant", "S-9", "acetoxy-silicone-sealant", "sealant", ["silicone", "silicone-acetoxy"])

_neutral := bench.end("sealant", "S-1", "neutral-silicone-sealant", "sealant", ["silicone", "silicone-neutral-cure"])

_glass := bench.end("touches", "glass", "architectural-glass", "other", ["glass"])

_found(contacts) := found if {
	found := acid_cure.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.copper, _bead, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "error",
		"message": "Acid-cure silicone S-9 is in contact with C-1 (copper-sheet), with no separator shown",
		"related": [],
		"facts": ["C-1-S-9"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"on glass": bench.contact(_glass, _bead, {}),
		"neutral cure": bench.contact(bench.copper, _neutral, {}),
	}
	count(_found([contact])) == 0
}
