package contact.preservative_test

import data.contact.preservative
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("dissolved-copper-preservative", "aluminum", "incompatible", "preservative-corrosion", "error"),
	bench.row("borate-preservative", "aluminum", "compatible", "none", "note"),
])

_keys := ["wood", "copper-preservative", "dissolved-copper-preservative"]

_nailer := bench.end("substrate", "W-1", "copper-azole-lumber", "lumber", _keys)

_borate := bench.end("substrate", "W-2", "borate-lumber", "lumber", ["wood", "borate-preservative"])

_strip := bench.end("material", "FM-3", "butyl-flashing-tape", "tape", ["butyl"])

_found(contacts) := found if {
	found := preservative.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as [{
			"id": "butyl-flashing-tape",
			"stops": ["preservative-corrosion"],
			"partly": [],
			"does_not_stop": [],
		}]
}

test_fires if {
	_found([bench.contact(bench.aluminum, _nailer, {})]) == {{
		"line": "W!12",
		"cells": ["E12", "G12"],
		"severity": "error",
		"message": "A-2 (aluminum-sheet) is in contact with treated wood W-1, with no separator shown",
		"related": [],
		"facts": ["A-2-W-1"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"borate": bench.contact(bench.aluminum, _borate, {}),
		"strip between": bench.contact(bench.aluminum, _nailer, {"kind": "separated", "separator": _strip}),
		"gap": bench.contact(bench.aluminum, _nailer, {"kind": "near", "clear_mm": 19}),
	}
	count(_found([contact])) == 0
}
