package contact.staining_test

import data.contact.staining
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("oil-exuding", "porous-masonry", "incompatible", "staining", "warning"),
	object.union(
		bench.row("silicone", "porous-masonry", "needs-confirmation", "staining", "warning"),
		{"confidence": 0.5},
	),
])

_caulk := bench.end("sealant", "S-7", "oleoresinous-caulk", "sealant", ["oil-exuding"])

_silicone := bench.end("sealant", "S-1", "neutral-silicone-sealant", "sealant", ["silicone"])

_stone := bench.end("touches", "limestone", "limestone-marble", "masonry", ["porous-masonry"])

_found(contacts) := found if {
	found := staining.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_caulk, _stone, {})]) == {{
		"line": "W!12",
		"cells": ["G12", "H12"],
		"severity": "warning",
		"message": "S-7 (oleoresinous-caulk) is in contact with limestone, with no separator shown",
		"related": [],
		"facts": ["S-7-limestone"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_weak_row_asks_nothing if count(_found([bench.contact(_silicone, _stone, {})])) == 0

# A trial that the row says was not made turns the question of a bead on stone into a lapse.
_tried(signals) := {f.severity |
	some f in staining.findings with input as _doc(signals)
		with data.knowledge.pairs as _asked_rows
		with data.knowledge.separators as []
}

_doc(signals) := {
	"lines": [{
		"id": "W!12",
		"sheet": "W",
		"row": 12,
		"struck": false,
		"hidden": false,
		"role": "sealant",
		"items": [],
		"cells": {},
		"texts": {},
		"signals": signals,
	}],
	"contacts": [bench.contact(_silicone, _marble, {})],
	"products": [],
	"project": {"notes": []},
}

_marble := bench.end("substrate", "marble", "limestone-marble", "masonry", ["stone", "carbonate-stone"])

_asked_rows := bench.pairs([bench.row("silicone", "carbonate-stone", "needs-confirmation", "staining", "warning")])

test_untried_stone_is_a_lapse if {
	_tried([{"id": "not_tried", "no": false, "text": "no stain trial", "slot": "remark"}]) == {"warning"}
}

test_stone_is_a_question if _tried([]) == {"note"}

test_tried_stone_is_a_question if {
	_tried([{"id": "not_tried", "no": true, "text": "trial passed", "slot": "remark"}]) == {"note"}
}

# Data that takes the stone, with a primer, answers for the bond and not for the stain.
_taken(signals) := {f.severity |
	takes := {
		"text": "stone", "keys": ["stone"], "products": [], "except": false, "at": {"sheet": "P", "row": 5, "cell": "I5"},
		"primer": "listed", "primers": ["P-1"], "only": false,
	}
	doc := object.union(_doc(signals), {
		"products": [bench.product("S-1", {"accepts": [takes]})],
		"contacts": [bench.contact(object.union(_silicone, {"product": "S-1"}), _marble, {})],
	})
	some f in staining.findings with input as doc
		with data.knowledge.pairs as _asked_rows
		with data.knowledge.separators as []
}

test_untried_stone_that_the_data_takes if {
	_taken([{"id": "not_tried", "no": false, "text": "no stain trial", "slot": "remark"}]) == {"warning"}
	_taken([]) == set()
}
