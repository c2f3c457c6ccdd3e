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

# A gap that the row says is left out turns the question of a wrap behind cedar into a lapse.
_wrapped(signals) := {f.severity |
	some f in _gap_found([bench.contact(_wrap, _cedar, {"signals": signals})])
}

_gap_found(contacts) := found if {
	found := tannin.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as bench.pairs([bench.row(
			"housewrap-polyolefin",
			"tannin-bearing",
			"needs-confirmation",
			"surfactant-wetting",
			"warning",
		)])
		with data.knowledge.separators as []
}

_wrap := bench.end("substrate", "WR-1", "housewrap-polyolefin", "membrane", ["housewrap-polyolefin", "polyolefin"])

test_no_gap_is_a_lapse if _wrapped(["laid_direct"]) == {"warning"}

test_wrap_is_a_question if _wrapped([]) == {"note"}
