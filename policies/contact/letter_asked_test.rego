package contact.letter_asked_test

import data.contact.letter_asked
import data.lib.bench_test as bench

_silicone := bench.end("sealant", "S-1", "neutral-silicone-sealant", "sealant", ["silicone", "silicone-neutral-cure"])

_urethane := bench.end("sealant", "S-2", "polyurethane-sealant", "sealant", ["polyurethane"])

_butyl := bench.end("sealant", "S-3", "butyl-sealant", "sealant", ["butyl"])

_gasket := bench.end("touches", "G-1", "silicone-gasket", "gasket", ["silicone"])

_rows := bench.pairs([
	bench.row("asphaltic", "silicone", "needs-confirmation", "adhesion-failure", "warning"),
	bench.row("asphaltic", "polyurethane", "needs-confirmation", "plasticizer-migration", "warning"),
	bench.row("asphaltic", "butyl", "needs-confirmation", "oil-migration", "warning"),
	bench.row("epdm", "silicone", "needs-confirmation", "adhesion-failure", "warning"),
])

_found(contact, products) := found if {
	found := letter_asked.findings with input as bench.document([contact], products)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

_vinyl := bench.end("material", "V-1", "vinyl-sheet", "membrane", ["pvc-plasticized"])

test_fires_in_full if {
	_found(bench.contact(bench.sheet, _silicone, {}), []) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "warning",
		"message": concat("", [
			"S-1 (neutral-silicone-sealant) is sealed to FM-1 (rubberized-asphalt-membrane), ",
			"and no letter or test of the two is told",
		]),
		"related": [],
		"facts": ["FM-1-S-1"],
	}}
}

test_fires_with_the_note_that_asks_for_letters if {
	some found in letter_asked.findings with input as object.union(
		bench.document([bench.contact(_silicone, bench.sheet, {})], []),
		{"project": {"limits": [], "signals": [], "notes": [{
			"text": "No sealant on asphaltic sheets without a letter of both makers.",
			"at": {"sheet": "N", "row": 4, "cell": "A4"},
		}]}},
	)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
	endswith(found.message, "told; the notes ask for a letter")
	found.related[0].at.row == 4
}

test_silent[name] if {
	some name, contact in {
		"a bead that lives with asphalt": bench.contact(bench.sheet, _butyl, {}),
		"a bead of which makers differ": bench.contact(bench.sheet, _urethane, {}),
		"no bead": bench.contact(bench.sheet, _gasket, {}),
		"a rubber that nothing is told of here": bench.contact(bench.epdm, _silicone, {}),
		"a sheet that no such bead fails on": bench.contact(_vinyl, _silicone, {}),
		"kept clear": bench.contact(bench.sheet, _silicone, {"kind": "near", "clear_mm": 25}),
		"metal to metal": bench.contact(bench.aluminum, _silicone, {"signals": ["metal_to_metal"]}),
		"a letter told": bench.contact(bench.sheet, _silicone, {"signals": ["letter_on_file"]}),
	}
	count(_found(contact, [])) == 0
}

test_silent_where_the_data_takes_it if {
	sealed := object.union(bench.sheet, {"product": "FM-1"})
	data_of := bench.product("FM-1", {"accepts": [bench.target("neutral silicone", ["silicone"], [])]})
	count(_found(bench.contact(sealed, _silicone, {}), [data_of])) == 0
}

# Two that meet in more rows than one are told once, as a question.
test_throughout_is_a_question if {
	again := bench.contact(
		object.union(bench.sheet, {"line": "W!13", "at": {"sheet": "W", "row": 13, "cell": "C13"}}),
		object.union(_silicone, {"line": "W!13", "at": {"sheet": "W", "row": 13, "cell": "H13"}}),
		{"id": "again", "line": "W!13", "at": {"sheet": "W", "row": 13, "cell": "G13"}},
	)
	found := letter_asked.findings with input as bench.document([bench.contact(bench.sheet, _silicone, {}), again], [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
	{[f.line, f.severity] | some f in found} == {["W!12", "note"]}
}

# The pair told twice in one row stands in no other row.
test_twice_in_a_row_is_one_row if {
	again := bench.contact(
		bench.sheet,
		object.union(_silicone, {"at": {"sheet": "W", "row": 12, "cell": "L12"}}),
		{"id": "again", "at": {"sheet": "W", "row": 12, "cell": "L12"}},
	)
	found := letter_asked.findings with input as bench.document([bench.contact(bench.sheet, _silicone, {}), again], [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
	count(found) == 1
	every f in found {
		not contains(f.message, "more row")
		f.severity == "warning"
		count(f.related) == 0
	}
}
