package contact.galvanic_gap_test

import data.contact.galvanic_gap
import data.lib.bench_test as bench

_metals := {"index": {
	"brass": {"index_v": 0.4, "families": ["bronze-brass"]},
	"zinc": {"index_v": 1.25, "families": ["zinc-sheet"]},
	"lead": {"index_v": 0.65, "families": ["lead-sheet"]},
	"aluminum": {"index_v": 0.9, "families": ["painted-aluminum"]},
}}

_bronze := bench.end("material", "B-1", "bronze-brass", "flashing-metal", ["copper-alloy", "metal"])

_zinc := bench.end("touches", "Z-2", "zinc-sheet", "flashing-metal", ["zinc", "metal"])

_lead := bench.end("touches", "L-1", "lead-sheet", "flashing-metal", ["lead", "metal"])

_painted := bench.end("touches", "A-1", "painted-aluminum", "flashing-metal", ["organic-coated", "metal"])

_found(contacts, rows) := found if {
	found := galvanic_gap.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as bench.pairs(rows)
		with data.knowledge.separators as []
		with data.knowledge.galvanic as _metals
}

test_fires if {
	_found([bench.contact(_bronze, _zinc, {})], []) == {{
		"line": "W!12",
		"cells": ["G12"],
		"message": concat("", [
			"B-1 (bronze-brass) touches Z-2 (zinc-sheet), ",
			"0.85 V apart in the galvanic table, and nothing parts them",
		]),
	}}
}

test_silent[name] if {
	some name, contact in {
		"at the limit": bench.contact(_bronze, _lead, {}),
		"painted": bench.contact(_bronze, _painted, {}),
		"apart": bench.contact(_bronze, _zinc, {"kind": "apart"}),
		"separated": bench.contact(_bronze, _zinc, {"kind": "separated"}),
		"no metal": bench.contact(_bronze, bench.xps, {}),
	}
	count(_found([contact], [])) == 0
}

test_a_row_beats_the_gap if {
	accepted := bench.row("copper-alloy", "zinc", "compatible", "none", "note")
	count(_found([bench.contact(_bronze, _zinc, {})], [accepted])) == 0
}
