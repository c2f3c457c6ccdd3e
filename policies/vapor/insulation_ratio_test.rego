package vapor.insulation_ratio_test

import data.lib.wall_test as wall
import data.vapor.insulation_ratio

_note(text) := {"text": text, "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}

_paint := wall.layer(36, "two coats of latex paint", "latex-paint", "coating", 286)

_batts(mm) := object.union(
	wall.layer(37, "wool batts in studs", "mineral-wool", "insulation", 1700),
	{"thickness_mm": mm},
)

_foam := wall.layer(41, "XPS", "xps", "insulation", 53)

_stucco := wall.layer(42, "acrylic finish", "eifs-lamina", "coating", 300)

_brick := wall.layer(42, "brick", "clay-brick", "masonry", 300)

_layers(inside, mm) := [inside, _batts(mm), wall.sheathing, wall.open_sheet, _foam, _stucco]

# The foam has so many R.
_found(layers, foam_r, note) := found if {
	r := [{"outside_share": 0.5, "vapor_class": "", "r_m2kw": _r(layer, foam_r)} | some layer in layers]
	doc := wall.document([wall.profile(layers, wall.mild, {"layers": r})], {})
	notes := [_note(text) | some text in [note]; text != ""]
	found := insulation_ratio.findings with input as object.union(doc, {"project": object.union(
		doc.project,
		{"notes": notes},
	)})
}

_r(layer, foam_r) := foam_r / 5.678 if layer.family == "xps"

_r(layer, _) := 0.1 if layer.family != "xps"

_zone_6 := "IECC climate zone 6A"

test_fires_in_full if {
	_found(_layers(_paint, 140), 5, _zone_6) == {{
		"line": "W!37",
		"cells": ["C37", "L37"],
		"severity": "warning",
		"message": concat("", [
			"Climate zone 6A with a class III vapor retarder inside differs from the code's table: ",
			"R-5 lies outside, the table has R-11.25",
		]),
		"source": "2021 IRC table R702.7(3) and IBC 1404.3, second-hand",
		"related": [
			{"line": "W!41", "cells": ["C41", "L41"], "what": "the insulation outside"},
			{"at": {"sheet": "Notes", "row": 4, "cell": "A4"}, "cells": ["A4"], "what": "IECC climate zone 6A"},
		],
	}}
}

# Published check values: zone 6 with R-5 differs, zone 5 with R-7.5 does not.
test_at_the_figure if {
	count(_found(_layers(_paint, 140), 11.25, _zone_6)) == 0
	count(_found(_layers(_paint, 140), 7.5, "Climate zone 5")) == 0
	count(_found(_layers(_paint, 140), 7, "Climate zone 5")) == 1
	count(_found(_layers(_paint, 90), 7.5, _zone_6)) == 0
}

test_stucco_is_no_vented_cladding if {
	stucco := wall.layer(42, "stucco", "portland-cement-stucco", "masonry", 300)
	count(_found([_paint, _batts(140), wall.sheathing, _foam, stucco], 5, _zone_6)) == 1
	count(_found([_paint, _batts(140), wall.sheathing, _foam, _brick], 5, _zone_6)) == 0
	count(_found([_paint, _batts(140), wall.sheathing, _foam, _brick], 5, "Climate zone 7")) == 1
	count(_found([_paint, _batts(140), _brick, _foam, stucco], 5, _zone_6)) == 0
}

test_board_alone_is_a_question if {
	{f.severity | some f in _found(_layers(wall.gypsum, 140), 5, _zone_6)} == {"note"}
}

test_class_two_from_memory if {
	kraft := wall.layer(36, "kraft face", "kraft-facer", "film", 50)
	some f in _found(_layers(kraft, 140), 3, _zone_6)
	f.severity == "note"
	endswith(f.message, "R-3 lies outside, the table has R-5")
}

test_silent[name] if {
	unknown := object.union(_paint, {"vapor_ng": null, "family": "", "keys": []})
	some name, case in {
		"enough": {"layers": _layers(_paint, 140), "r": 12, "note": _zone_6},
		"no zone": {"layers": _layers(_paint, 140), "r": 5, "note": ""},
		"mild zone": {"layers": _layers(_paint, 140), "r": 0, "note": "Climate zone 3"},
		"film inside": {"layers": _layers(wall.film, 140), "r": 5, "note": _zone_6},
		"unknown inside": {"layers": _layers(unknown, 140), "r": 5, "note": _zone_6},
		"no stud wall": {
			"layers": [_paint, wall.wool, wall.sheathing, _foam, _stucco],
			"r": 5,
			"note": _zone_6,
		},
		"mass wall": {
			"layers": array.concat([_brick], _layers(_paint, 140)),
			"r": 5,
			"note": _zone_6,
		},
		"siding": {
			"layers": [_paint, _batts(140), wall.sheathing, _foam, object.union(_stucco, {"text": "fiber cement siding"})],
			"r": 5,
			"note": _zone_6,
		},
		"vented": {
			"layers": [_paint, _batts(140), wall.sheathing, _foam, wall.panel],
			"r": 5,
			"note": _zone_6,
		},
		"board alone, nothing outside": {
			"layers": [wall.gypsum, _batts(140), wall.sheathing, _stucco],
			"r": 0,
			"note": _zone_6,
		},
	}
	count(_found(case.layers, case.r, case.note)) == 0
}

# Wool outside of the wall's sheet fills no studs: it is the insulation outside of them.
test_wool_outside_of_the_sheet if {
	found := {f.message |
		some f in _found([_paint, _batts(140), wall.sheathing, wall.open_sheet, wall.wool, wall.panel], 0, "Climate zone 7")
	}
	count([m | some m in found; contains(m, "R-0.568 lies outside, the table has R-15")]) == 1
	count(_found([_paint, wall.sheathing, wall.open_sheet, wall.wool, wall.panel], 0, "Climate zone 7")) == 0
}
