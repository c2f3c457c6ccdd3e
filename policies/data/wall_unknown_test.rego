package data.wall_unknown_test

import data.data.wall_unknown
import data.lib.bench_test as bench
import data.lib.desk_test as desk

_row(n, wall) := desk.row(n, "FL-1", {
	"group": wall,
	"texts": {"group": wall, "material": "FL-1"},
	"cells": {"group": sprintf("B%d", [n]), "material": sprintf("C%d", [n]), "install": sprintf("F%d", [n])},
})

_wall(n, name) := object.union(object.remove(bench.line(sprintf("Types!%d", [n]), n, {}), ["cells"]), {
	"mark": name,
	"texts": {"mark": name, "layers": "brick, wool, FL-1, block"},
	"cells": {"mark": sprintf("A%d", [n]), "layers": sprintf("B%d", [n])},
	"items": [{"slot": "layers", "polarity": "yes"}],
})

_list := [_wall(3, "EW1"), _wall(4, "EW2"), _wall(5, "EW3")]

_usual := [_row(10, "EW1"), _row(11, "EW2"), _row(12, "EW2")]

_notes(texts) := {"project": {"notes": [{"text": text, "at": {"sheet": "N", "row": 1, "cell": "A1"}} |
	some text in texts
]}}

_found(rows, more) := found if {
	found := wall_unknown.findings with input as object.union(desk.document(rows, [], []), more)
}

test_fires_in_full if {
	rows := array.concat(array.concat(_list, _usual), [_row(14, "EW7"), _row(15, "EW7, EW1")])
	_found(rows, {}) == {{
		"line": "W!14",
		"cells": ["B14"],
		"message": "Wall type EW7 is not in the list of wall types, which has EW1, EW2, EW3",
		"related": [{"line": "W!15", "cells": ["B15"], "what": "the same wall type"}],
	}}
}

test_fires_for_notes[name] if {
	some name, texts in {
		"one note for all": ["Wall types. EW1: brick, wool, block. EW2: panel, wool, board. EW3: precast"],
		"a note for each": ["EW1 brick, cavity 40, wool, block", "EW2 panel, wool, board", "EW3 - precast panels"],
		"with sizes": ["EW1  6 in. block, SBS sheet", "EW2 panel on 6 in. studs, wool, board", "EW3 200 mm concrete, XPS"],
	}
	count(_found(array.concat(_usual, [_row(14, "EW7")]), _notes(texts))) == 1
}

test_silent[name] if {
	some name, case in {
		"no list": {"rows": [_row(14, "EW7")], "notes": []},
		"listed": {"rows": [_row(14, "EW3")], "notes": []},
		"listed with a hyphen": {"rows": [_row(14, "EW-3")], "notes": []},
		"variant of a listed wall": {"rows": [_row(14, "EW3a")], "notes": []},
		"other letters": {"rows": [_row(14, "RF7")], "notes": []},
		"no code": {"rows": [_row(14, "stair tower")], "notes": []},
		"no wall": {"rows": [_row(14, "")], "notes": []},
		"most are not listed": {"rows": [_row(20 + n, sprintf("EW%d", [n])) | some n in [4, 5, 6]], "notes": []},
		"struck": {"rows": [object.union(_row(14, "EW7"), {"struck": true})], "notes": []},
	}
	list := [wall | some wall in _list; name != "no list"]
	count(_found(array.concat(array.concat(list, _usual), case.rows), _notes(case.notes))) == 0
}

_typed(n, wall) := object.union(object.remove(_row(n, ""), ["cells"]), {
	"texts": {"group": "", "type": wall},
	"cells": {"type": sprintf("D%d", [n]), "material": sprintf("C%d", [n]), "install": sprintf("F%d", [n])},
})

test_fires_under_type if {
	rows := array.concat(_list, [_typed(10, "EW1"), _typed(11, "EW2"), _typed(14, "EW7"), _typed(15, "strip, EW8")])
	found := _found(rows, {})
	{[f.line, f.cells] | some f in found} == {["W!14", ["D14"]]}
}

test_silent_for_product_under_type if {
	rows := array.concat(_list, [_typed(10, "EW1"), _typed(11, "EW2"), _typed(14, "EW7")])
	count(wall_unknown.findings) == 0 with input as desk.document(rows, [{"id": "EW7", "tag": "EW7"}], [])
}

# A list of walls may have a column for the sheet of each.
test_list_with_its_sheets if {
	list := [object.union(wall, {"cells": {"material": sprintf("E%d", [wall.row])}}) | some wall in _list]
	count(_found(array.concat(list, array.concat(_usual, [_row(14, "EW7")])), {})) == 1
}

# A list of walls may tell one numbered layer a row, under the code of the wall.
_layer(n, name, order, cells) := object.union(object.remove(bench.line(sprintf("Types!%d", [n]), n, {}), ["cells"]), {
	"group": name,
	"order": order,
	"texts": {"group": name, "material": "block"},
	"cells": object.union(
		{"group": sprintf("A%d", [n]), "order": sprintf("B%d", [n]), "material": sprintf("C%d", [n])},
		cells,
	),
})

_stacked(cells) := [
	_layer(3, "EW1", "1", cells), _layer(4, "EW1", "2", cells),
	_layer(5, "EW2", "1", cells), _layer(6, "EW2", "2", cells),
]

test_fires_for_stacked_layers if {
	rows := array.concat(array.concat(_stacked({}), _usual), [_row(14, "EW7")])
	{one.line | some one in _found(rows, {})} == {"W!14"}
}

# Layers that are put on are the schedule itself, and list no walls.
test_silent_for_layers_of_work if {
	rows := array.concat(array.concat(_stacked({"primer": "D3"}), _usual), [_row(14, "EW7")])
	_found(rows, {}) == set()
}

_page(sheet, title) := {"project": {"notes": [{"text": text, "at": at} |
	some i, text in [title, "EW1 Stone 30 Wool 140 Block 190", "EW2 Panel 4.5 mm Wool 140", "EW3 Brick Block"]
	at := {"sheet": sheet, "row": i + 1, "cell": sprintf("A%d", [i + 1])}
]}}

test_fires_for_titled_page if {
	rows := array.concat(_usual, [_row(14, "EW7"), _row(15, "EW3")])
	found := _found(rows, _page("Walls", "EXTERNAL WALL BUILD-UPS, inside to outside"))
	{f.line | some f in found} == {"W!14"}
	count(_found(rows, _page("Walls", "Openings and their sheets"))) == 0
}

_placed(n, place) := object.union(object.remove(_row(n, ""), ["cells"]), {
	"place": place,
	"texts": {"group": "", "material": "FL-1", "place": place},
	"cells": {"place": sprintf("B%d", [n]), "material": sprintf("C%d", [n]), "install": sprintf("F%d", [n])},
})

# A column of walls beside one of places is read into the place, and told at its cell.
test_fires_for_first_of_place if {
	rows := array.concat(_list, [
		_placed(10, "EW1; north, grid 1-3"),
		_placed(11, "EW2; stair"),
		_placed(12, "EW3; east"),
		_placed(14, "EW7; north, grid 3-5"),
		_placed(15, "north; EW8"),
		_placed(16, "EW9 north"),
	])
	found := _found(rows, {})
	{[f.line, f.cells] | some f in found} == {["W!14", ["B14"]]}
}

test_layers_without_a_material if {
	bare := object.union(object.remove(_wall(6, "EW7"), ["items"]), {
		"texts": {"mark": "EW7", "layers": "as A-602"},
		"items": [],
	})
	rows := array.concat(array.concat(_list, _usual), [_row(14, "EW7")])
	count(_found(rows, {})) == 1
	count(_found(array.concat(rows, [bare]), {})) == 0
	count(_found(
		array.concat(rows, [object.union(bare, {"cells": {
			"mark": "A6",
			"layers": "B6",
			"primer": "C6",
		}})]),
		{},
	)) == 1
}

# A title may be the word alone; a sentence on walls heads no list.
test_under_a_plain_title[title] if {
	some title, n in {"WALLS": 1, "Exterior walls:": 1, "Walls are furred on the inside": 0}
	texts := [title, "EW1 brick on block", "EW2 panel on studs", "EW3 precast", "EW4 curtain wall"]
	notes := [{"text": text, "at": {"sheet": "N", "row": i, "cell": "A1"}} | some i, text in texts]
	rows := array.concat(_usual, [_row(14, "EW7")])
	count(_found(rows, {"project": {"notes": notes}})) == n
}

_said(n, slot, text) := object.union(object.remove(_row(n, ""), ["cells"]), {
	"texts": {"material": "FL-1", slot: text},
	"cells": {"material": sprintf("C%d", [n]), "install": sprintf("F%d", [n]), slot: sprintf("K%d", [n])},
})

# Rows in no groups of walls may call a code a wall type in words.
test_fires_for_words if {
	rows := [_said(10, "remark", "Wall type EW-8, see elevation"), _said(11, "place", "infill, wall type: EW-8")]
	_found(array.concat(_list, rows), {}) == {{
		"line": "W!10",
		"cells": ["K10"],
		"message": "Wall type EW-8 is not in the list of wall types, which has EW1, EW2, EW3",
		"related": [{"line": "W!11", "cells": ["K11"], "what": "the same wall type"}],
	}}
}

test_silent_for_words[name] if {
	some name, row in {
		"listed": _said(10, "remark", "wall type EW-2"),
		"variant": _said(10, "remark", "wall type EW2b"),
		"former": _said(10, "remark", "was wall type EW8"),
		"denied": _said(10, "remark", "EW2, not wall type EW8"),
		"no word of a type": _said(10, "remark", "behind EW8"),
		"other letters": _said(10, "place", "wall type RW8"),
		"another column": _said(10, "touches", "wall type EW8"),
	}
	count(_found(array.concat(_list, [row]), {})) == 0
}

test_silent_for_words_without_a_list if count(_found([_said(10, "remark", "wall type EW8")], {})) == 0

_coded(n, layers) := desk.row(n, "FL-1", {
	"texts": {"layers": layers, "material": "FL-1"},
	"cells": {"layers": sprintf("D%d", [n]), "material": sprintf("C%d", [n]), "install": sprintf("F%d", [n])},
})

# Rows whose column of build-ups holds the code of one; the layers themselves are no code.
test_code_of_a_build_up[name] if {
	some name, case in {
		"not listed": ["EW7", 1],
		"listed": ["EW3", 0],
		"variant": ["EW3b", 0],
		"other letters": ["RF7", 0],
		"its layers": ["brick, wool, EW7 sheet", 0],
		"none": ["-", 0],
	}
	rows := array.concat(_list, [_coded(10, "EW1"), _coded(11, "EW2"), _coded(12, "EW2"), _coded(14, case[0])])
	found := _found(rows, {})
	count(found) == case[1]
	every one in found { one.cells == ["D14"] }
}

# A row of the list that names no known material lists its wall, also where the list tells backings and touches; a row
# of work with a column of layers lists none.
test_listed_beside_layers if {
	told := {"table": "Types#3", "cells": {"type": "A6", "layers": "B6", "touches": "C6"}}
	list := [object.union(wall, {"table": "Types#3", "cells": {"touches": "C1"}}) | some wall in _list]
	bare := object.union(
		object.remove(_wall(6, ""), ["items", "cells", "texts", "mark"]),
		object.union(told, {"mark": "", "items": [], "texts": {"type": "EW7", "layers": "window wall, maker's system"}}),
	)
	rows := array.concat(array.concat(list, _usual), [_row(14, "EW7")])
	count(_found(rows, {})) == 1
	count(_found(array.concat(rows, [bare]), {})) == 0
	count(_found(array.concat(rows, [object.union(bare, {"table": "W#1"})]), {})) == 1
	count(_found(array.concat(rows, [object.union(bare, {"cells": {"lap": "D6"}})]), {})) == 1
	count(_found(array.concat(rows, [object.union(bare, {"cells": {"install": "F6"}})]), {})) == 1
}

# A place may end in the code of its wall, after a comma.
test_place_ends_in_code if {
	rows := [
		_placed(10, "north stair, EW1"),
		_placed(11, "north stair, upper half, EW2"),
		_placed(12, "hall, EW3"),
		_placed(14, "dock, EW-9"),
	]
	{f.line | some f in _found(array.concat(_list, rows), {})} == {"W!14"}
}

test_silent_at_end_of_place[place] if {
	some place in ["dock, EW-2", "dock, EW2b", "dock, RW9", "dock at EW9", "dock, EW9 above", "EW9, dock"]
	rows := [_placed(10, "stair, EW1"), _placed(11, "stair, EW2"), _placed(12, "hall, EW3"), _placed(14, place)]
	count(_found(array.concat(_list, rows), {})) == 0
}

test_silent_at_end_of_place_without_a_list if {
	count(_found([_placed(10, "stair, EW1"), _placed(14, "dock, EW9")], {})) == 0
}

# One column may hold the place and the wall, with a sign between; a grid that looks like a code is none.
test_place_parted_by_a_sign if {
	rows := [
		_placed(10, "L1 east B2-B5 / EW1 - gang 2"),
		_placed(11, "L1 east / EW2 - gang 2"),
		_placed(12, "dock | EW3"),
		_placed(14, "L3 east B2 / EW-9 - gang 2"),
		_placed(15, "L3 east / G9 - gang 2"),
		_placed(16, "B2 - gang 2"),
	]
	[f.message | some f in _found(array.concat(_list, rows), {})] == [concat(" ", [
		"Wall type EW-9 is not in the list of wall types,",
		"which has EW1, EW2, EW3",
	])]
}

# Walls may go by letters; one of another first part, and an area whose name looks so, is none of the list.
test_lettered if {
	list := [_wall(3, "EW-A"), _wall(4, "EW-B"), _wall(5, "EW-C")]
	usual := [_row(10, "EW-A"), _row(11, "EW-B / TPO"), _row(12, "EW-C")]
	rows := [_row(14, "EW-J"), _row(15, "RF-J"), _row(16, "N-S")]
	found := _found(array.concat(list, array.concat(usual, rows)), {})
	[f.message | some f in found] == ["Wall type EW-J is not in the list of wall types, which has EW-A, EW-B, EW-C"]
}
