package data.build_up_differs_test

import data.data.build_up_differs
import data.lib.bench_test as bench
import data.lib.desk_test as desk

_wool(n) := object.union(desk.own(n, "I-3"), {"family": "mineral-wool", "name": "wool", "class": "insulation"})

_row(n, mm, text, more) := desk.row(n, "I-3", object.union(
	{
		"items": [_wool(n)],
		"group": "W4",
		"role": "insulation",
		"figures": {"thickness_mm": desk.figure(mm, text, "in")},
	},
	more,
))

_layer(mm) := object.union(_wool(40), {"slot": "layers", "thickness_mm": mm, "clause": "wool as drawn"})

# A wall type, with its layers.
_wall(name, layers) := bench.line("T!40", 40, {"table": "t2", "texts": {"type": name}, "items": layers})

_found(rows, walls) := found if {
	doc := desk.document(array.concat(rows, walls), [desk.product("I-3", 4, {})], [])
	found := build_up_differs.findings with input as doc
}

test_fires_in_full if {
	_found([_row(12, 50.8, "2 in", {})], [_wall("W4", [_layer(76.2)])]) == {{
		"line": "W!12",
		"cells": ["D12"],
		"message": "I-3 (wool) is scheduled at 2 in, but the build-up of W4 has 3 in",
		"related": [{"at": {"sheet": "W", "row": 40, "cell": "C40"}, "cells": ["C40"], "what": "\"wool as drawn\""}],
	}}
}

test_one_of_two_walls_agrees if {
	walls := [_wall("W4", [_layer(76.2)]), object.union(_wall("W5", [_layer(50.8)]), {"id": "T!41"})]
	count(_found([_row(12, 50.8, "2 in", {"group": "W4, W5"})], walls)) == 0
	count(_found([_row(12, 101.6, "4 in", {"group": "W4/W5"})], walls)) == 1
}

# The cell of the material tells it, and the place begins with the wall type.
_told(place, mm) := desk.row(12, "I-3", told) if {
	board := object.union(desk.figure(mm, "2 in", "in"), {"at": {"sheet": "W", "row": 12, "cell": "B12"}})
	told := {"items": [_wool(12)], "group": "ANNEX", "place": place, "role": "insulation", "figures": {"board_mm": board}}
}

test_told_beside_the_board if {
	wall := [_wall("W4", [_layer(76.2)])]
	{f.cells[0] | some f in _found([_told("W4, stair, south", 50.8)], wall)} == {"B12"}
	count(_found([_told("W4, stair, south", 76.2)], wall)) == 0
	count(_found([_told("Stair at W4", 50.8)], wall)) == 0
}

# The row of a sheet has columns for the insulation over it, and so has the list of wall types.
_sheet(mm, more) := desk.row(12, "M-1", object.union(
	{
		"items": [desk.own(12, "M-1"), object.union(_wool(12), {"id": "W!12/9", "slot": "touches"})],
		"texts": {"type": "W4"},
		"figures": {"insulation_mm": desk.figure(mm, "2 in", "in"), "thickness_mm": desk.figure(1, "1 mm", "mm")},
	},
	more,
))

_listed := bench.line("T!40", 40, {
	"table": "t2",
	"texts": {"type": "W4"},
	"items": [
		object.union(_wool(40), {"id": "T!40/1", "slot": "layers", "clause": "block / wool / brick"}),
		object.union(_wool(40), {"id": "T!40/2", "slot": "touches", "clause": "wool as drawn"}),
	],
	"figures": {"thickness_mm": desk.figure(76.2, "3 in", "in")},
})

test_insulation_over_the_sheet if {
	{f.message | some f in _found([_sheet(50.8, {})], [_listed])} == {concat("", [
		"I-3 (wool) is scheduled at 2 in, but the build-up of W4 has 3 in",
	])}
	count(_found([_sheet(76.2, {})], [_listed])) == 0
	count(_found([_sheet(50.8, {"texts": {"type": "W5"}})], [_listed])) == 0
	count(_found([_sheet(50.8, {"place": "Jamb"})], [_listed])) == 0
}

# A row a layer, the wall type beside the first.
test_a_row_for_each_layer if {
	board := object.union(_wool(42), {"slot": "layers"})
	mm := {"thickness_mm": desk.figure(76.2, "3 in", "in")}
	gypsum := object.union(_layer(12.7), {"product": "G-1"})
	first := bench.line("T!41", 41, {"table": "t2", "order": "1", "texts": {"type": "W4"}, "items": [gypsum]})
	second := bench.line("T!42", 42, {"table": "t2", "order": "2", "items": [board], "figures": mm})
	found := _found([_row(12, 50.8, "2 in", {})], [first, second])
	{f.message | some f in found} == {"I-3 (wool) is scheduled at 2 in, but the build-up of W4 has 3 in"}
	count(_found([_row(12, 76.2, "3 in", {})], [first, second])) == 0
}

test_silent[name] if {
	some name, case in {
		"same": {"rows": [_row(12, 76.2, "3 in", {})], "wall": _wall("W4", [_layer(75)])},
		"nominal": {"rows": [_row(12, 18, "18 mm", {})], "wall": _wall("W4", [_layer(19.05)])},
		"other wall": {"rows": [_row(12, 50.8, "2 in", {})], "wall": _wall("W6", [_layer(76.2)])},
		"no group": {"rows": [_row(12, 50.8, "2 in", {"group": ""})], "wall": _wall("W4", [_layer(76.2)])},
		"twice in the wall": {"rows": [_row(12, 50.8, "2 in", {})], "wall": _wall("W4", [_layer(76.2), _layer(25.4)])},
		"at a reveal": {"rows": [_row(12, 50.8, "2 in", {"place": "window reveals"})], "wall": _wall("W4", [_layer(76.2)])},
		"two layers": {
			"rows": [_row(12, 38.1, "1-1/2", {"texts": {"thickness": "2 layers of 1-1/2 in"}})],
			"wall": _wall("W4", [_layer(76.2)]),
		},
		"the rest in another row": {
			"rows": [_row(12, 38.1, "1-1/2 in", {}), _row(13, 38.1, "1-1/2 in", {})],
			"wall": _wall("W4", [_layer(76.2)]),
		},
		"not told": {"rows": [_row(12, 50.8, "2 in", {})], "wall": _wall("W4", [object.remove(_layer(1), ["thickness_mm"])])},
		"between studs": {
			"rows": [_row(12, 139.7, "5-1/2 in", {})],
			"wall": _wall("W4", [object.union(_layer(152.4), {"clause": "6 in studs with I-3"})]),
		},
		"struck": {"rows": [_row(12, 50.8, "2 in", {"struck": true})], "wall": _wall("W4", [_layer(76.2)])},
	}
	count(_found(case.rows, [case.wall])) == 0
}

# Drops of one wall have a row each, all of them with the whole of the insulation; a list of wall types may have no
# build-up, and a column for the insulation with its size.
test_drops_of_one_wall[name] if {
	beside := object.union(_wool(40), {"slot": "touches", "thickness_mm": 76.2, "clause": "I-3 76"})
	some name, tc in {
		"another drop is right": {"other": 76.2, "mm": 50.8, "n": 1},
		"another row has the rest": {"other": 25.4, "mm": 50.8, "n": 0},
		"as the wall type has it": {"other": 76.2, "mm": 76.2, "n": 0},
	}
	rows := [_row(12, tc.mm, "x", {"place": "L1-L3"}), _row(13, tc.other, "y", {"place": "L1-L3"})]
	count([f | some f in _found(rows, [_wall("W4", [beside])]); f.line == "W!12"]) == tc.n
}

# "4 in. mineral wool I-3": the words have the size, and the tag tells which wool it is.
_named(mm, family) := [
	object.union(_layer(mm), {"id": "T!40/1", "product": "", "family": "mineral-wool", "clause": "wool I-3"}),
	object.union(object.remove(_layer(0), ["thickness_mm"]), {"id": "T!40/2", "family": family, "clause": "wool I-3"}),
]

test_words_and_their_tag if {
	count(_found([_row(12, 50.8, "2 in", {})], [_wall("W4", _named(101.6, "mineral-wool"))])) == 1
	count(_found([_row(12, 101.6, "4 in", {})], [_wall("W4", _named(101.6, "mineral-wool"))])) == 0
	count(_found([_row(12, 50.8, "2 in", {})], [_wall("W4", _named(101.6, "xps"))])) == 0
}

# The build-up in words, and the row by its product.
test_build_up_in_words[name] if {
	words := object.union(_layer(76.2), {"product": "", "tag": ""})
	some name, case in {
		"less": {"mm": 50.8, "layers": [words], "n": 1},
		"the same": {"mm": 76.2, "layers": [words], "n": 0},
		"another kind": {"mm": 50.8, "layers": [object.union(words, {"family": "xps"})], "n": 0},
		"twice": {"mm": 50.8, "layers": [words, object.union(words, {"thickness_mm": 25.4})], "n": 0},
		"between studs": {"mm": 50.8, "layers": [object.union(words, {"clause": "studs with wool"})], "n": 0},
	}
	count(_found([_row(12, case.mm, "2 in", {})], [_wall("W4", case.layers)])) == case.n
}

# The cells of what the sheet touches, or is covered with, tell the insulation over it with its size.
_covered(slot, mm, words) := desk.row(12, "M-1", {
	"items": [
		desk.own(12, "M-1"),
		object.union(_wool(12), {"id": "W!12/8", "slot": "touches"}),
		object.union(_wool(12), {"id": "W!12/9", "slot": slot, "thickness_mm": mm}),
	],
	"texts": {"type": "W4", slot: words},
	"figures": {"insulation_mm": desk.figure(mm, "2 in", "in"), "thickness_mm": desk.figure(1, "1 mm", "mm")},
})

test_told_over_the_sheet[name] if {
	some name, case in {
		"covered with less": {"row": _covered("front", 50.8, "I-3 2 in + brick"), "n": 1},
		"touches less": {"row": _covered("touches", 50.8, "I-3 2 in; brick"), "n": 1},
		"the whole": {"row": _covered("front", 76.2, "I-3 3 in"), "n": 0},
		"two layers that add up": {"row": _covered("front", 38.1, "I-3 1.5 in + 1.5 in"), "n": 0},
		"a count of layers": {"row": _covered("touches", 38.1, "2 layers I-3"), "n": 0},
	}
	count(_found([case.row], [_wall("W4", [_layer(76.2)])])) == case.n
}
