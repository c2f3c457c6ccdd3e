package vapor.class_zone_test

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
