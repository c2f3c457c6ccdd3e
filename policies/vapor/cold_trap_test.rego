package vapor.cold_trap_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.cold_side
import data.vapor.cold_trap
import data.vapor.two_barriers

_layers := [wall.gypsum, wall.film, wall.batt, wall.sheathing, wall.sheet]

_doc(layers, winter) := wall.document([wall.profile(layers, winter, {})], {})

test_fires_in_full if {
	found := cold_trap.findings with input as _doc(_layers, wall.cold)
	found == {{
		"line": "W!40",
		"cells": ["C40", "L40"],
		"message": concat("", [
			"AB-1 lies outside the insulation and VR-1 inside it: with -5.2 °C in the three coldest months ",
			"the wall can dry to neither side",
		]),
		"related": [
			{"line": "W!36", "cells": ["C36", "L36"], "what": "the inner barrier"},
			{"line": "W!37", "cells": ["C37", "L37"], "what": "the insulation"},
		],
	}}
}

test_told_once if {
	count(cold_side.findings) + count(two_barriers.findings) == 0 with input as _doc(_layers, wall.cold)
}

test_build_up_in_one_cell if {
	items := [object.union(layer, {"polarity": "yes", "at": {"cell": "V24"}}) |
		some layer in [wall.film, wall.batt, wall.sheet]
	]
	row := desk.row(24, "R-1", {"layers": items})
	known := wall.profile([wall.sheet, wall.wool], wall.cold, {})
	doc := object.union(wall.document([known], {}), {"lines": [row, desk.row(40, "X", {}), desk.row(41, "X", {})]})
	found := cold_trap.findings with input as doc
	{[f.line, f.cells, f.related] | some f in found} == {["W!24", ["C24", "L24", "V24"], []]}
}

test_silent[name] if {
	some name, case in {
		"open sheet": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": wall.cold},
		"cool winter is a question": {"layers": _layers, "winter": 3},
		"no film": {"layers": [wall.gypsum, wall.batt, wall.sheet], "winter": wall.cold},
		"insulation outside": {"layers": [wall.film, wall.batt, wall.sheet, wall.wool], "winter": wall.cold},
		"unknown place": {"layers": _layers, "winter": null},
	}
	found := cold_trap.findings with input as _doc(case.layers, case.winter)
	count(found) == 0
}

test_unknown_permeance if {
	unknown := object.union(wall.sheet, {"vapor_ng": null, "family": "", "keys": []})
	count(cold_trap.findings) == 0 with input as _doc([wall.film, wall.batt, unknown], wall.cold)
}

_of_another := {"items": [object.union(wall.sheet, {"product": "ZZ-9"})]}

# A wall that a list tells in one cell, or in cells one below another, is told at the row of the schedule that puts its
# outer sheet on there; in a cell for each, at another product or in another wall, at the list.
test_row_that_installs_it[name] if {
	some name, case in {
		"installed": [{}, "V3", "W!9", ["C9", "L9"], 0],
		"another wall": [{"group": "EX2"}, "V3", "W!24", ["C24", "L24", "V24"], 0],
		"layers side by side": [{}, "W3", "W!24", ["C24", "L24", "V24"], 0],
		"layers one below another": [{}, "V4", "W!9", ["C9", "L9"], 1],
		"another product": [_of_another, "V3", "W!24", ["C24", "L24", "V24"], 0],
	}
	layers := [object.union(layer, {
		"id": layer.text,
		"item": layer.text,
		"slot": "layers",
		"product": layer.text,
		"polarity": "yes",
		"at": {"cell": "V24"},
		"line": "W!24",
	}) |
		some layer in [wall.film, wall.batt, wall.sheet]
	]
	cells := [object.union(layer, {"at": {"cell": ["V3", case[1]][min([i, 1])], "row": 3 + (i * case[4])}}) |
		some i, layer in layers
	]
	listed := desk.row(24, "EX1", {
		"mark": "EX1",
		"table": "walls",
		"layers": layers,
		"items": cells,
		"texts": {"layers": "film; batt; sheet"},
	})
	own := object.union(wall.sheet, {"id": "W!9/1", "slot": "material", "product": wall.sheet.text, "polarity": "yes"})
	row := object.union(desk.row(9, "X", {"group": "EX1", "items": [own]}), case[0])
	known := wall.profile([wall.sheet, wall.wool], wall.cold, {})
	doc := object.union(wall.document([known], {}), {"lines": [
		listed, row,
		desk.row(40, "X", {}), desk.row(41, "X", {}),
	]})
	found := cold_trap.findings with input as doc
	{[f.line, f.cells] | some f in found} == {[case[2], case[3]]}
	every f in found { contains(f.message, " of wall type EX1 lies outside") == startswith(case[2], "W!9") }
}

# A foundation among the layers of a listed wall stands in the ground.
test_foundation_among_the_layers[text] if {
	some text, n in {"CIP foundation; film; batt; sheet": 0, "film; batt; sheet": 1}
	items := [object.union(layer, {"polarity": "yes", "at": {"cell": "V24"}}) |
		some layer in [wall.film, wall.batt, wall.sheet]
	]
	row := desk.row(24, "R-1", {"layers": items, "texts": {"layers": text}})
	known := wall.profile([wall.sheet, wall.wool], wall.cold, {})
	doc := object.union(wall.document([known], {}), {"lines": [row, desk.row(40, "X", {}), desk.row(41, "X", {})]})
	count(cold_trap.findings) == n with input as doc
}
