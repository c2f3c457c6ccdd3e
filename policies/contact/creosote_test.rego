package contact.creosote_test

import data.contact.creosote
import data.lib.bench_test as bench

_ties := bench.end("touches", "timber crib", "creosote-timber", "lumber", ["wood", "creosote", "coal-tar"])

_found(contacts) := found if {
	found := creosote.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as {}
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.sheet, _ties, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": concat("", [
			"Timber crib (creosoted wood) is in contact with asphaltic sheet FM-1, ",
			"with no separator shown",
		]),
		"related": [],
		"facts": ["FM-1-timber crib"],
	}}
}

test_silent[name] if {
	some name, contact in {
		"eight feet clear": bench.contact(bench.sheet, _ties, {"kind": "near", "clear_mm": 2438}),
		"said to be apart": bench.contact(bench.sheet, _ties, {"kind": "apart"}),
		"other wood": bench.contact(bench.sheet, bench.end("touches", "ties", "borate-lumber", "lumber", ["wood"]), {}),
	}
	count(_found([contact])) == 0
}
