package vapor.class_zone_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.class_zone

_note(text) := {"text": text, "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}

_kraft := wall.layer(37, "kraft-faced batts", "glass-fiber-kraft-faced", "insulation", 57)

_found(layers, winter, note) := found if {
	doc := wall.document([wall.profile(layers, winter, {})], {})
	notes := [_note(text) | some text in [note]; text != ""]
	found := class_zone.findings with input as object.union(doc, {"project": object.union(
		doc.project,
		{"notes": notes},
	)})
}

_layers(inside) := [wall.gypsum, inside, wall.batt, wall.sheathing, wall.open_sheet]

test_fires_in_full if {
	_found(_layers(_kraft), wall.mild, "Climate zone 2A") == {{
		"line": "W!37",
		"cells": ["C37", "L37"],
		"severity": "warning",
		"message": concat("", [
			"Kraft-faced batts is class II on the room side in climate zone 2A, ",
			"unlike the code's table, which has none there",
		]),
		"related": [{
			"at": {"sheet": "Notes", "row": 4, "cell": "A4"},
			"cells": ["A4"],
			"what": "Climate zone 2A",
		}],
	}}
}

test_film_where_the_winter_is_not_mild if {
	{f.line | some f in _found(_layers(wall.film), 5, "Climate zone 3B")} == {"W!36"}
}

test_silent[name] if {
	some name, case in {
		"class II in zone 3": {"inside": _kraft, "winter": 9, "note": "Climate zone 3"},
		"cold zone": {"inside": wall.film, "winter": -5, "note": "Climate zone 6"},
		"no zone": {"inside": _kraft, "winter": 9, "note": ""},
		"told as warm": {"inside": wall.film, "winter": 12, "note": "Climate zone 2"},
		"paint": {
			"inside": wall.layer(36, "latex paint", "latex-paint", "coating", 286),
			"winter": 12,
			"note": "Climate zone 2",
		},
	}
	count(_found(_layers(case.inside), case.winter, case.note)) == 0
}

test_nothing_insulates_outside if {
	count(_found([wall.gypsum, wall.film, wall.sheathing], 5, "Climate zone 2")) == 0
}

# Notes that bar classes on the room side, with a film and with faced batts in rows of no section.
_noted(note, line) := found if {
	found := class_zone.findings with input as object.union(
		desk.document([line], [], []),
		{"project": {"notes": [_note(note)]}},
	)
}

_item(family, class) := object.union(desk.own(12, "VB-2"), {"family": family, "class": class, "keys": [family]})

_film_row := desk.row(12, "VB-2", {
	"group": "W6",
	"items": [_item("polyethylene-sheet", "membrane")],
	"texts": {"substrate": "inside face of the studs"},
})

_batt_row(no, ng) := desk.row(12, "VB-2", {
	"role": "insulation",
	"items": [_item("glass-fiber-insulation", "insulation")],
	"figures": {"vapor_ng": desk.figure(ng, "its figure", "ng")},
	"signals": [{"id": "facer_outward", "no": no, "text": "face to the room", "slot": "material"}],
})

test_class_that_the_notes_bar if {
	some found in _noted("Never put Class I/II layers at the inside face of the insulation.", _film_row)
	found.severity == "error"
	contains(found.message, "is class I and goes on the room side, where the notes allow none")
	some batt in _noted("No class 1 or 2 layers on the room side", _batt_row(true, 50))
	contains(batt.message, "is class II and goes on the room side")
}

test_class_that_the_notes_allow[name] if {
	some name, case in {
		"asked for": ["A class I layer belongs on the room side", _film_row],
		"another class": ["No class II layers on the room side", _film_row],
		"no less": ["No less than class II on the room side", _film_row],
		"the other side": ["No class I layers on the weather side", _film_row],
		"another wall": ["W7: no class I layers on the room side", _film_row],
		"an open face": ["No class I or II layers on the room side", _batt_row(true, 700)],
		"a face turned out": ["No class I or II layers on the room side", _batt_row(false, 50)],
		"a film outside": [
			"No class I or II layers on the room side",
			object.union(_film_row, {"texts": {"substrate": "street face of the sheathing"}}),
		],
	}
	count(_noted(case[0], case[1])) == 0
}

test_wall_that_the_notes_name if count(_noted("W6: no class I layers on the room side", _film_row)) == 1
