package contact.tannin_test

import data.contact.tannin
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("tannin-bearing", "carbon-steel", "incompatible", "tannin-reaction", "error"),
	bench.row("stainless", "tannin-bearing", "compatible", "none", "note"),
])

_cedar := bench.end("material", "cedar siding", "tannin-rich-wood", "lumber", ["wood", "tannin-bearing"])

_nails := bench.end("touches", "N-1", "bright-steel-fastener", "fastener", ["carbon-steel", "metal"])

_stainless := bench.end("touches", "N-2", "stainless-fastener", "fastener", ["stainless", "metal"])

_pine := bench.end("material", "pine", "untreated-softwood", "lumber", ["wood"])

_found(contacts) := found if {
	found := tannin.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_cedar, _nails, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "N-1 (bright-steel-fastener) is in contact with cedar siding, with no separator shown",
		"related": [],
		"facts": ["cedar siding-N-1"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"stainless": bench.contact(_cedar, _stainless, {}),
		"pine": bench.contact(_pine, _nails, {}),
	}
	count(_found([contact])) == 0
}
