package data.note_contradiction_test

import data.data.note_contradiction
import data.lib.desk_test as desk

_note(days, text) := {
	"kind": "exposure_days",
	"min": null,
	"max": days,
	"keys": ["rubberized-asphalt-membrane"],
	"text": text,
	"at": {"sheet": "N", "row": 5, "cell": "B5"},
}

_data(days) := desk.product("FM-3", 4, {"figures": {"exposure_days": desk.figure(days, "60", "days")}})

_found(note, products) := found if {
	doc := object.union(desk.document([], products, []), {"project": {"limits": [note]}})
	found := note_contradiction.findings with input as doc
}

test_fires_in_full if {
	_found(_note(90, "FM-3 may stay open 90 days"), [_data(60)]) == {{
		"at": {"sheet": "N", "row": 5, "cell": "B5"},
		"cells": ["B5"],
		"message": "the note allows FM-3 90 days in the sun, but its data says 60 days",
		"related": [{"product": "FM-3", "cells": ["G4"], "what": "its data"}],
	}}
}

test_silent[name] if {
	some name, case in {
		"the same": [_note(60, "FM-3 may stay open 60 days"), [_data(60)]],
		"the note is stricter": [_note(30, "FM-3 no more than 30 days open"), [_data(60)]],
		"a maker's letter": [object.union(_note(90, "L-9 maker gives FM-3 90 days"), {"letter": "L-9"}), [_data(60)]],
		"the data is silent": [_note(90, "FM-3 may stay open 90 days"), [desk.product("FM-3", 4, {})]],
		"no product is named": [_note(90, "SBS sheet 90 days open"), [_data(60)]],
		"another product": [_note(90, "FM-31 may stay open 90 days"), [_data(60)]],
		"two products": [_note(90, "FM-3 and FM-4 90 days open"), [_data(60), desk.product("FM-4", 5, {})]],
	}
	count(_found(case[0], case[1])) == 0
}

# Tags are written with dashes, points and letters of any alphabet.
test_tags_with_signs[tag] if {
	some tag in ["FM–3", "FM·3", "№ 3→", "FM_3.1 (W)", "ФМ+3"]
	product := object.union(_data(60), {"id": tag, "tag": tag})
	count(_found(_note(90, sprintf("%s may stay open 90 days", [tag])), [product])) == 1
}
