package contact.galvanic_test

import data.contact.galvanic
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("copper", "aluminum", "incompatible", "galvanic", "error"),
	bench.row("copper", "stainless", "compatible", "none", "note"),
	bench.row("stainless-fastener", "aluminum-sheet", "compatible", "none", "note"),
	bench.row("stainless", "aluminum", "needs-confirmation", "galvanic", "warning"),
])

_screw := bench.end("touches", "SS screws", "stainless-fastener", "fastener", ["stainless", "metal"])

_tape := bench.end("touches", "slip tape", "isolation-tape", "separator", ["separator"])

_washer := bench.end("touches", "washers", "isolation-washer", "separator", ["separator"])

_found(contacts) := found if {
	found := galvanic.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as [
			{"id": "isolation-tape", "stops": ["galvanic"], "partly": [], "does_not_stop": ["metal-ion-runoff"]},
			{"id": "isolation-washer", "stops": [], "partly": ["galvanic"], "does_not_stop": []},
		]
}

test_fires if {
	_found([bench.contact(bench.copper, bench.aluminum, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "C-1 (copper-sheet) is in contact with A-2 (aluminum-sheet), with no separator shown",
		"related": [],
		"facts": ["C-1-A-2"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"family row beats the trait row": bench.contact(_screw, bench.aluminum, {}),
		"stainless": bench.contact(bench.copper, object.union(_screw, {"family": "stainless-sheet"}), {}),
		"tape": bench.contact(bench.copper, bench.aluminum, {"kind": "separated", "separator": _tape}),
		"said apart": bench.contact(bench.copper, bench.aluminum, {"kind": "apart"}),
	}
	count(_found([contact])) == 0
}

test_part_stop_is_a_question if {
	some f in _found([bench.contact(bench.copper, bench.aluminum, {"kind": "separated", "separator": _washer})])
	f.severity == "note"
	f.message == concat("", [
		"C-1 (copper-sheet) near A-2 (aluminum-sheet): ",
		"washers between them stops this only in part, ask both makers",
	])
}

test_other_row_is_named if {
	below := object.union(bench.aluminum, {"line": "W!13", "at": {"sheet": "W", "row": 13, "cell": "C13"}})
	no_cell := {"sheet": "W", "row": 12, "cell": ""}
	some f in _found([bench.contact(bench.copper, below, {"from": "layer-order", "at": no_cell})])
	f.cells == ["C12"]
	f.related == [{"line": "W!13", "cells": ["C13"], "what": "A-2 stands here"}]
}
