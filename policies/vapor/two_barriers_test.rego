package vapor.two_barriers_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.two_barriers

_of_profile(layers, winter, result) := found if {
	found := two_barriers.findings with input as wall.document([wall.profile(layers, winter, result)], {})
}

_around := [wall.film, wall.batt, wall.sheet]

_item(slot, text, family, class) := object.union(bench.item(slot, text, family, class, []), {
	"line": "W!23",
	"at": {"sheet": "W", "row": 23, "cell": sprintf("%s23", [_columns[slot]])},
})

_columns := {"behind": "K", "touches": "G", "remark": "M", "under": "E"}

_film := _item("behind", "0.15 mm polyethylene", "polyethylene-sheet", "membrane")

_batt := _item("behind", "batt", "glass-fiber-insulation", "insulation")

_row(items, more) := found if {
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	row := object.union(desk.row(23, "R-01", {"items": items}), more)
	found := two_barriers.findings with input as desk.document([row], [tight, open], [])
}

test_row_in_full if {
	_row([desk.own(23, "R-01"), _batt, _film], {}) == {{
		"line": "W!23",
		"cells": ["C23", "K23"],
		"message": concat("", [
			"R-01 and 0.15 mm polyethylene close in the insulation between them, ",
			"which dries to neither side",
		]),
	}}
}

test_row_with_foil_outside if {
	foil := object.union(_item("touches", "foil-faced polyiso", "polyiso", "insulation"), {"keys": ["foil-faced"]})
	found := _row([desk.own(23, "V-1"), foil, _batt, _film], {})
	{f.cells | some f in found} == {["C23", "G23", "K23"]}
}

_poly := _item("remark", "poly", "polyethylene-sheet", "membrane")

_room_film := object.union(_poly, {"clause": "poly on the warm side"})

_wool := _item("touches", "stone wool", "mineral-wool", "insulation")

_filled := {"signals": [desk.said(23, "studs_filled", "touches")]}

test_film_on_the_room_side_of_filled_studs if {
	count(_row([desk.own(23, "R-01"), _room_film], _filled)) == 1
	count(_row([desk.own(23, "R-01"), _room_film], {})) == 0
	count(_row([desk.own(23, "R-01"), _room_film, _wool], _filled)) == 0 # it may keep the sheet warm
}

# The row is that of the film, and tells of the sheet on the other face.
test_film_row_with_the_sheet_outside if {
	film := object.union(_film, {"slot": "material", "product": "V-1", "id": "W!23/V-1"})
	sheet := object.union(desk.own(23, "R-01"), {
		"slot": "touches",
		"class": "membrane",
		"clause": "R-01 outside, on the boards",
		"at": {"sheet": "W", "row": 23, "cell": "G23"},
	})
	found := _row([film, _batt, _room_film, sheet], _filled)
	{f.message | some f in found} == {"R-01 and poly close in the insulation between them, which dries to neither side"}
	count(_row([film, _batt, _room_film, object.union(sheet, {"clause": "R-01 at the sill"})], _filled)) == 0
}

# The notes bar a film inside: it is one too many though the studs are empty.
test_film_that_the_notes_bar if {
	row := desk.row(23, "R-01", {
		"items": [desk.own(23, "R-01"), _room_film],
		"signals": [desk.said(23, "vapor_closed_inside", "remark")],
	})
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	doc := desk.document([row], [tight], [])
	count(two_barriers.findings) == 0 with input as doc
	project := object.union(doc.project, {"signals": [{"id": "one_tight_layer", "no": false}]})
	count(two_barriers.findings) == 1 with input as object.union(doc, {"project": project})
}

# The row of the film says itself that a tight sheet lies outside; the studs need not be filled.
test_film_that_tells_of_the_sheet[name] if {
	film := object.union(desk.own(23, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	some name, case in {
		"outside": {"clause": "R-01 lies on the outside of these studs", "side": "room side of the studs", "count": 1},
		"nowhere": {"clause": "R-01 at the sill", "side": "room side of the studs", "count": 0},
		"film is not inside": {"clause": "R-01 on the outside of the block", "side": "on the ground", "count": 0},
	}
	row := desk.row(23, "VR-1", {
		"role": "film",
		"items": [film, object.union(desk.own(23, "R-01"), {"id": "W!23/7", "slot": "substrate", "clause": case.clause})],
		"texts": {"substrate": case.side},
	})
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	doc := desk.document([row], [tight], [])
	count(two_barriers.findings) == 0 with input as doc
	project := object.union(doc.project, {"signals": [{"id": "one_tight_layer", "no": false}]})
	count(two_barriers.findings) == case.count with input as object.union(doc, {"project": project})
}

test_row_silent[name] if {
	slip := object.union(_film, {"clause": "20 mil polyethylene slip sheet between metal and lintel"})
	some name, case in {
		"open sheet": {"items": [desk.own(23, "V-1"), _batt, _film], "more": {}},
		"no insulation": {"items": [desk.own(23, "R-01"), _film], "more": {}},
		"empty studs": {
			"items": [desk.own(23, "R-01"), _batt, _film],
			"more": {"signals": [desk.said(23, "studs_empty", "behind")]},
		},
		"the film itself": {
			"items": [
				object.union(_film, {"slot": "material", "product": "R-01", "id": "W!23/R-01"}),
				_batt,
				object.union(_poly, {"clause": "poly on the warm side"}),
			],
			"more": _filled,
		},
		"no film": {"items": [desk.own(23, "R-01"), _batt], "more": {}},
		"said to be left out": {
			"items": [desk.own(23, "R-01"), _batt, object.union(_film, {"polarity": "no"})],
			"more": {},
		},
		"slip sheet": {
			"items": [desk.own(23, "R-01"), object.union(slip, {"at": {"cell": "M23"}})],
			"more": {"signals": [desk.said(23, "studs_filled", "behind")]},
		},
		"struck": {"items": [desk.own(23, "R-01"), _batt, _film], "more": {"struck": true}},
	}
	count(_row(case.items, case.more)) == 0
}

test_profile_severity[name] if {
	needed := {"share": {"out_c": -5.2, "needed_outside_share": 0.4}}
	some name, case in {
		"cool winter": {"layers": _around, "winter": 3, "result": {}, "level": "warning"},
		"mild winter": {"layers": _around, "winter": 9, "result": {}, "level": "warning"},
		"place unknown": {"layers": _around, "winter": null, "result": {}, "level": "warning"},
		"kept warm": {
			"layers": array.concat(_around, [wall.wool]),
			"winter": wall.cold,
			"result": object.union(wall.shares([0.9, 0.9, 0.6, 0.6]), needed),
			"level": "note",
		},
	}
	desk.levels(_of_profile(case.layers, case.winter, case.result)) == {case.level}
}

_of_notes(layers, signals) := found if {
	doc := wall.document([wall.profile(layers, wall.cold, {})], {})
	project := object.union(doc.project, {"signals": signals})
	found := two_barriers.findings with input as object.union(doc, {"project": project})
}

test_film_in_empty_studs_that_the_notes_bar if {
	barred := [{"id": "one_tight_layer", "no": false, "text": "one tight layer", "slot": "note", "at": {"cell": "A2"}}]
	empty := [wall.film, wall.sheathing, wall.sheet, wall.wool]
	_of_notes(empty, barred) == {{
		"line": "W!36",
		"cells": ["C36", "L36"],
		"message": "VR-1 lies inside of AB-1, and the notes allow one vapor-tight layer a wall",
		"related": [{"line": "W!40", "cells": ["C40", "L40"], "what": "the outer barrier"}],
	}}
	count(_of_notes(empty, [])) == 0
	count(_of_notes([wall.film, wall.sheathing, wall.open_sheet, wall.wool], barred)) == 0
	count(_of_notes([wall.sheathing, wall.sheet, wall.wool], barred)) == 0
}

test_profile_silent if {
	count(_of_profile(_around, wall.cold, {})) == 0 # another rule tells it
	count(_of_profile([wall.film, wall.batt, wall.open_sheet], 3, {})) == 0
}

# A row that tells of the film in a remark and of the batts in what lies under the sheet.
_told_film(clause) := object.union(_item("remark", "6 mil poly", "polyethylene-sheet", "membrane"), {"clause": clause})

_under := _item("under", "batt studs", "insulation-unspecified", "insulation")

test_row_told_in_words[name] if {
	board := _item("touches", "mineral wool board", "mineral-wool", "insulation")
	some name, case in {
		"behind the board": {"items": [_told_film("6 mil poly behind gyp bd"), _under], "count": 1},
		"on the room side": {"items": [_told_film("6 mil poly, room side"), _under], "count": 1},
		"somewhere": {"items": [_told_film("6 mil poly at the sill"), _under], "count": 0},
		"insulation outside": {"items": [_told_film("6 mil poly behind gyp bd"), _under, board], "count": 0},
		"studs without batts": {"items": [_told_film("6 mil poly behind gyp bd")], "count": 0},
	}
	count(_row(array.concat([desk.own(23, "R-01")], case.items), {})) == case.count
}

# A film in row 24 of the wall whose sheet is in row 23.
_two_rows(film, sheet, others) := found if {
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	own := object.union(desk.own(24, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	row := object.union(
		desk.row(24, "VR-1", {
			"group": "W4",
			"role": "film",
			"items": [own],
			"texts": {"substrate": "wood studs, room side"},
			"signals": [desk.said(24, "studs_filled", "remark")],
		}),
		film,
	)
	rows := array.concat([desk.row(23, "R-01", object.union({"group": "W4"}, sheet)), row], others)
	found := two_barriers.findings with input as desk.document(rows, [tight, open], [])
}

test_two_rows_in_full if {
	_two_rows({}, {}, []) == {{
		"line": "W!24",
		"cells": ["C24", "L24"],
		"message": "R-01 and VR-1 close in the insulation between them, which dries to neither side",
		"related": [{"line": "W!23", "cells": ["C23", "L23"], "what": "the outer barrier"}],
	}}
}

test_two_rows_silent[name] if {
	some name, case in {
		"another wall": {"film": {}, "sheet": {"group": "W5"}, "others": []},
		"open sheet": {"film": {}, "sheet": {"items": [desk.own(23, "V-1")]}, "others": []},
		"strip": {"film": {}, "sheet": {"texts": {"material": "Membrane strip at the sill"}}, "others": []},
		"empty studs": {"film": {"signals": [desk.said(24, "studs_empty", "remark")]}, "sheet": {}, "others": []},
		"side not told": {"film": {"texts": {"substrate": "wood studs"}}, "sheet": {}, "others": []},
		"struck sheet": {"film": {}, "sheet": {"struck": true}, "others": []},
		"insulation in a row": {
			"film": {},
			"sheet": {},
			"others": [desk.row(25, "IN-1", {"group": "W4", "role": "insulation"})],
		},
	}
	count(_two_rows(case.film, case.sheet, case.others)) == 0
}

# The row of a film tells itself that a tight sheet lies outside of it.
test_one_row_that_the_notes_bar[clause] if {
	some [clause, place, told] in [
		["inboard of R-01, ext. face", "north", 1],
		["R-01 on ext. board", "int. face of wall", 1],
		["R-01 on ext. board", "north", 0],
	]
	own := object.union(desk.own(24, "VR-1"), {"id": "W!24/1", "family": "polyethylene-sheet", "keys": [], "product": ""})
	outer := object.union(_item("touches", "R-01", "", "membrane"), {"id": "W!24/2", "product": "R-01", "clause": clause})
	texts := {"substrate": clause, "place": place}
	row := desk.row(24, "VR-1", {"group": "W4", "role": "film", "items": [own, outer], "texts": texts})
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	notes := {"project": {"limits": [], "signals": [{"id": "one_tight_layer", "no": false}]}}
	doc := desk.document([row], [tight], [])
	count(two_barriers.findings) == told with input as object.union(doc, notes)
}

# Where the notes bar a second barrier, it does not matter what lies outside of the sheet.
test_two_rows_that_the_notes_bar if {
	notes := {"project": {"limits": [], "signals": [{"id": "one_tight_layer", "no": false}]}}
	doc := object.union(_two_row_document, notes)
	count(two_barriers.findings) == 1 with input as doc
	count(two_barriers.findings) == 0 with input as _two_row_document
}

_two_row_document := desk.document(
	[
		desk.row(23, "R-01", {"group": "W4"}),
		desk.row(24, "VR-1", {
			"group": "W4",
			"role": "film",
			"items": [object.union(desk.own(24, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})],
			"texts": {"substrate": "wood studs, room side"},
			"signals": [desk.said(24, "studs_filled", "remark")],
		}),
		desk.row(25, "IN-1", {"group": "W4", "role": "insulation"}),
	],
	[desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})],
	[],
)

test_side_told_otherwise[name] if {
	lining := object.union(_item("behind", "gypsum board", "gypsum-board", "substrate"), {"id": "W!24/9"})
	own := object.union(desk.own(24, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	some name, case in {
		"by the inner neighbor": {"texts": {"substrate": "studs"}, "items": [own, lining], "count": 1},
		"by the name of the layer": {
			"texts": {"substrate": "studs", "type": "Room-side vapor control layer"},
			"items": [own],
			"count": 1,
		},
		"of sheathing": {
			"texts": {"substrate": "studs", "type": "Sheet on sheathing"},
			"items": [own, object.union(lining, {"family": "glass-mat-gypsum-sheathing"})],
			"count": 0,
		},
	}
	count(_two_rows({"texts": case.texts, "items": case.items}, {}, [])) == case.count
}

# The row of the film that names an open sheet on the other face has its own; a row that tells of both is told there.
test_film_with_its_own_sheet_outside[name] if {
	own := object.union(desk.own(24, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	sheet := object.union(desk.own(24, "V-1"), {"id": "W!24/7", "slot": "touches", "class": "membrane"})
	some name, case in {
		"open sheet outside": {"sheet": {"clause": "V-1 on the outer face"}, "count": 0},
		"open sheet somewhere": {"sheet": {"clause": "V-1 at the sill"}, "count": 1},
		"tight sheet outside": {"sheet": {"clause": "R-01 on the outer face", "product": "R-01", "keys": []}, "count": 1},
	}
	count(_two_rows({"items": [own, object.union(sheet, case.sheet)]}, {}, [])) == case.count
}

test_sheet_row_that_tells_of_the_film if {
	both := {"items": [desk.own(23, "R-01"), _batt, _film]}
	{f.line | some f in _two_rows({}, both, [])} == {"W!23"}
	{f.line | some f in _two_rows({}, both, [desk.row(25, "R-01", {"group": "W4"})])} == {"W!23", "W!24"}
}

# The wall type bars a film inside: it is one too many though the studs are empty and insulation lies outside.
test_film_that_the_wall_type_bars[name] if {
	some name, case in {
		"barred": {"wall": "W7", "says": ["one_tight_layer"], "count": 1},
		"another wall": {"wall": "W71", "says": ["one_tight_layer"], "count": 0},
		"nothing barred": {"wall": "W7", "says": [], "count": 0},
	}
	film := object.union(desk.own(30, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	side := {"substrate": "inside face of studs"}
	rows := [
		desk.row(30, "VR-1", {"role": "film", "group": "W7", "items": [film], "texts": side}),
		desk.row(31, "R-01", {"group": "W7", "items": [desk.own(31, "R-01")]}),
		desk.row(32, "MW", {"group": "W7", "role": "insulation", "items": [_wool]}),
		desk.row(4, "W7", {
			"sheet": "T",
			"table": "t2",
			"mark": case.wall,
			"texts": {"layers": "panel; wool; sheet; studs"},
			"signals": [object.union(desk.said(4, id, "remark"), {"text": "single tight layer"}) | some id in case.says],
		}),
	]
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	found := two_barriers.findings with input as desk.document(rows, [tight], [])
	count(found) == case.count
	every f in found {
		f.message == "VR-1 lies inside of R-01, and wall type W7 allows one vapor-tight layer (\"single tight layer\")"
	}
}

# Where the notes bar a second tight layer, a film is one though the studs are empty; its row tells its side by the
# lining that it goes on, or by what the row is called.
test_film_that_the_notes_bar_by_its_lining[name] if {
	own := object.union(desk.own(24, "VR-1"), {"family": "vinyl-wall-covering", "keys": [], "product": ""})
	lining := object.union(_item("substrate", "gypsum board", "gypsum-board", "substrate"), {"id": "W!24/9"})
	sheathing := object.union(lining, {"family": "glass-mat-gypsum-sheathing"})
	some name, case in {
		"on the lining": {"row": {"items": [own, lining]}, "count": 1},
		"by its name": {"row": {"items": [own], "refs": ["Plan room lining, interior"]}, "count": 1},
		"on sheathing": {"row": {"items": [own, sheathing]}, "count": 0},
		"interior is part of a word": {"row": {"items": [own], "refs": ["Interiors contract"]}, "count": 0},
	}
	film := object.union({"group": "W4", "role": "other", "texts": {"substrate": "studs"}, "signals": []}, case.row)
	doc := desk.document(
		[desk.row(23, "R-01", {"group": "W4"}), desk.row(24, "VR-1", film)],
		[desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})],
		[],
	)
	notes := {"project": {"limits": [], "signals": [{"id": "one_tight_layer", "no": false}]}}
	found := two_barriers.findings with input as object.union(doc, notes)
	count(found) == case.count
	every f in found {
		f.message == "VR-1 lies inside of R-01, and the notes allow one vapor-tight layer a wall"
	}
	count(two_barriers.findings) == 0 with input as doc
}

# Notes that keep the tight layer on the warm side bar a tight sheet outside of one that the row tells.
test_tight_sheet_outside_of_the_one_on_the_warm_side if {
	at := {"sheet": "W", "row": 23, "cell": "H23"}
	inner := {"id": "vapor_closed_inside", "no": false, "text": "warm side: VCL", "slot": "touches", "at": at}
	doc := desk.document(
		[desk.row(23, "R-01", {"group": "W4", "signals": [inner]})],
		[desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})],
		[],
	)
	notes := {"project": {"limits": [], "signals": [{"id": "tight_warm_only", "no": false}]}}
	count(two_barriers.findings) == 1 with input as object.union(doc, notes)
	count(two_barriers.findings) == 0 with input as doc
}

# A column of the inner sheets tells the side of the film; the row, that insulation lies between the members.
test_film_of_the_inner_column[name] if {
	wool := object.union(_item("remark", "wool", "mineral-wool", "insulation"), {"clause": "wool 120 between uprights"})
	some name, case in {
		"between": {"items": [desk.own(23, "R-01"), _film, wool], "heading": "Foil (inner)", "n": 1},
		"outside": {
			"items": [desk.own(23, "R-01"), _film, object.union(wool, {"clause": "wool 120 in front"})],
			"heading": "Foil (inner)",
			"n": 0,
		},
		"no side": {"items": [desk.own(23, "R-01"), _film, wool], "heading": "Behind", "n": 0},
		"an open sheet": {"items": [desk.own(23, "V-1"), _film, wool], "heading": "Foil (inner)", "n": 0},
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	row := desk.row(23, "R-01", {"items": case.items})
	table := {"id": row.table, "columns": [{"slot": "behind", "heading": case.heading}]}
	doc := object.union(desk.document([row], [tight, open], []), {"reading": {"tables": [table]}})
	found := two_barriers.findings with input as doc
	count(found) == case.n
}

# A column may be headed as that of the barrier inside, and the wall type of the row has batts.
test_film_column_on_a_wall_type_with_batts[name] if {
	film := object.union(_item("remark", "VR-2", "polyethylene-sheet", "membrane"), {
		"slot": "layers",
		"at": {"sheet": "W", "row": 23, "cell": "P23"},
	})
	some name, case in {
		"batts": {"own": "R-01", "wall": "batt-insulation", "heading": "Interior vapour barrier", "n": 1},
		"no batts": {"own": "R-01", "wall": "gypsum-board", "heading": "Interior vapour barrier", "n": 0},
		"another column": {"own": "R-01", "wall": "batt-insulation", "heading": "Build-up", "n": 0},
		"an open sheet": {"own": "V-1", "wall": "batt-insulation", "heading": "Interior vapour barrier", "n": 0},
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	row := desk.row(23, "R-01", {"group": "T2", "items": [desk.own(23, case.own), film]})
	list := object.union(
		desk.row(40, "R-01", {"items": [object.union(
			_item("remark", "fill", case.wall, "insulation"),
			{"slot": "layers", "clause": "studs with fill"},
		)]}),
		{"table": "list", "mark": "T2", "texts": {"layers": "studs with fill, plywood, R-01"}, "role": "other"},
	)
	table := {"id": row.table, "columns": [{"slot": "layers", "letter": "P", "heading": case.heading}]}
	doc := object.union(desk.document([row, list], [tight, open], []), {"reading": {"tables": [table]}})
	found := two_barriers.findings with input as doc
	count(found) == case.n
}

_of_list(text, family, class) := object.union(_item("remark", text, family, class), {"slot": "layers"})

_list_open := object.union(_of_list("V-1", "vapor-permeable-self-adhered-membrane", "membrane"), {"product": "V-1"})

_list_tight := object.union(_of_list("R-01", "rubberized-asphalt-membrane", "membrane"), {"product": "R-01"})

_list_batt := _of_list("batts", "batt-insulation", "insulation")

_list_film := _of_list("6 mil poly", "polyethylene-sheet", "membrane")

_foil := object.union(_item("touches", "foil-faced board", "polyiso", "insulation"), {"keys": ["foil-faced"]})

# The film and the filled studs stand in the list of wall types, the tight layer in the row.
test_film_of_the_wall_type[name] if {
	closed := [_list_open, _list_batt, _list_film]
	denied := object.union(_poly, {"polarity": "no"})
	some name, case in {
		"a tight sheet for the open one": {"own": "R-01", "more": [], "list": closed, "n": 1},
		"a tight board over the open one": {"own": "V-1", "more": [_foil], "list": closed, "n": 1},
		"an open sheet": {"own": "V-1", "more": [_wool], "list": closed, "n": 0},
		"no film": {"own": "R-01", "more": [], "list": [_list_open, _list_batt], "n": 0},
		"no batts": {"own": "R-01", "more": [], "list": [_list_open, _list_film], "n": 0},
		"built so": {"own": "R-01", "more": [], "list": [_list_tight, _list_open, _list_batt, _list_film], "n": 0},
		"the film left out": {"own": "R-01", "more": [denied], "list": closed, "n": 0},
		"a strip at a sill": {"own": "R-01", "more": [], "list": closed, "place": "window sills", "n": 0},
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	row := object.union(
		desk.row(23, "R-01", {
			"group": "T2",
			"items": array.concat([desk.own(23, case.own)], case.more),
		}),
		{"place": object.get(case, "place", "north")},
	)
	list := object.union(desk.row(40, "R-01", {"items": case.list}), {
		"table": "list",
		"mark": "",
		"texts": {"type": "T2", "layers": "as built"},
		"role": "other",
	})
	found := two_barriers.findings with input as desk.document([row, list], [tight, open], [])
	count(found) == case.n
}

# A note keeps the inside of a wall open by its code: a film there is one too many, and none in another wall.
test_film_where_a_note_keeps_the_inside_open[name] if {
	some name, case in {"that wall": {"scope": "w7", "count": 1}, "another": {"scope": "w8, w9", "count": 0}}
	note := {
		"kind": "open_inside", "min": null, "max": null, "roles": [], "keys": [], "over": [], "scope": case.scope,
		"when": [], "letter": "", "text": "W7: open to dry to the room", "at": {"sheet": "Notes", "row": 5, "cell": "B5"},
	}
	film := object.union(desk.own(30, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	side := {"substrate": "inside face of studs"}
	rows := [
		desk.row(30, "VR-1", {"role": "film", "group": "W7", "items": [film], "texts": side}),
		desk.row(31, "R-01", {"group": "W7", "items": [desk.own(31, "R-01")]}),
		desk.row(32, "MW", {"group": "W7", "role": "insulation", "items": [_wool]}),
	]
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	doc := desk.document(rows, [tight], [])
	project := object.union(doc.project, {"limits": [note]})
	found := two_barriers.findings with input as object.union(doc, {"project": project})
	count(found) == case.count
	every f in found {
		contains(f.message, "where the notes keep the inside open (\"W7: open to dry to the room\")")
		count(f.related) == 2
	}
}

# The film stands in a column of neighbors and beads, and the wall type tells of the batts; in empty studs it is none.
test_film_beside_and_batts_in_the_wall_type[layers] if {
	some layers, n in {"panel; plywood; batts": 1, "panel; plywood; no batts": 0}
	batts := object.union(_batt, {"id": "T!4/1", "slot": "layers", "polarity": ["no", "yes"][n]})
	beside := object.union(_film, {"slot": "sealant", "clause": "VR-1 inside", "text": "VR-1"})
	rows := [
		desk.row(31, "R-01", {"group": "W7", "items": [desk.own(31, "R-01"), beside], "texts": {"sealant": "VR-1 inside"}}),
		desk.row(4, "", {
			"sheet": "T", "table": "t2", "mark": "", "group": "", "items": [batts],
			"texts": {"type": "W7", "layers": layers},
		}),
	]
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	found := two_barriers.findings with input as desk.document(rows, [tight], [])
	count(found) == n
}

# A wall type that says it has no barrier inside bars the film of a row, though no studs are filled there.
test_film_where_the_wall_type_has_none[name] if {
	said := [
		object.union(desk.said(4, "vapor_closed_inside", "layers"), {"no": true}),
		object.union(desk.said(4, "vapor_open_inside", "layers"), {"text": "no vapor barrier inside"}),
	]
	wall_type := desk.row(4, "", {
		"id": "T!4", "sheet": "T", "table": "t2", "mark": "EW-3", "items": [],
		"texts": {"layers": "brick / wool / sheet / block"},
	})
	some name, case in {
		"barred": [{"signals": said}, "EW-3", "behind", 1],
		"says nothing": [{}, "EW-3", "behind", 0],
		"has one": [{"signals": [desk.said(4, "vapor_closed_inside", "layers")]}, "EW-3", "behind", 0],
		"another wall": [{"signals": said}, "EW-4", "behind", 0],
		"beside it": [{"signals": said}, "EW-3", "touches", 0],
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	items := [desk.own(23, "R-01"), object.union(_film, {"slot": case[2]})]
	row := desk.row(23, "R-01", {"group": case[1], "items": items})
	doc := desk.document([row, object.union(wall_type, case[0])], [tight], [])
	found := two_barriers.findings with input as doc
	count(found) == case[3]
}

# The film is that which the wall type asks for, and its outside is open: the sheet is one too many, told at its row.
test_film_of_the_wall_type_is_told_at_the_sheet[film] if {
	some film, lines in {"6 mil poly": ["W!23"], "VR-1": ["W!23", "W!24"]}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	own := object.union(desk.own(24, film), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	rows := [
		desk.row(23, "R-01", {"group": "T2", "items": [desk.own(23, "R-01")]}),
		desk.row(24, film, {"group": "T2", "role": "film", "items": [own], "texts": {"substrate": "room side of studs"}}),
		object.union(desk.row(40, "R-01", {"items": [_list_open, _list_batt, _list_film]}), {
			"table": "list",
			"mark": "",
			"texts": {"type": "T2", "layers": "as built"},
			"role": "other",
		}),
	]
	notes := {"project": {"limits": [], "signals": [{"id": "one_tight_layer", "no": false}]}}
	found := two_barriers.findings with input as object.union(desk.document(rows, [tight, open], []), notes)
	{one.line | some one in found} == {line | some line in lines}
}

# The tight board has a row of its own, and lies on the open sheet that the wall type has.
test_board_over_the_open_sheet_of_the_wall_type[name] if {
	some name, case in {
		"on the open sheet": {"under": "V-1", "ng": 2, "list": [], "n": 1},
		"on a tight sheet": {"under": "R-01", "ng": 2, "list": [], "n": 0},
		"an open board": {"under": "V-1", "ng": 1500, "list": [], "n": 0},
		"the board of the wall type": {"under": "V-1", "ng": 2, "list": [_list_board], "n": 0},
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	board := desk.product("B-7", 8, {"figures": {"vapor_ng": desk.figure(case.ng, "2", "ng")}})
	under := object.union(desk.own(23, case.under), {"id": "W!23/2", "slot": "substrate"})
	own := object.union(desk.own(23, "B-7"), {"class": "insulation", "family": "polyiso", "keys": []})
	row := desk.row(23, "B-7", {"group": "T2", "role": "insulation", "items": [own, under]})
	layers := array.concat([_list_open, _list_batt, _list_film], case.list)
	list := object.union(desk.row(40, "R-01", {"items": layers}), {
		"table": "list",
		"mark": "",
		"texts": {"type": "T2", "layers": "as built"},
		"role": "other",
	})
	found := two_barriers.findings with input as desk.document([row, list], [tight, open, board], [])
	count(found) == case.n
}

_list_board := object.union(_of_list("B-7", "polyiso", "insulation"), {"product": "B-7"})

# A row of a board is one of two barriers if foil is on it and the wall type keeps the inside open.
test_foil_board_where_the_wall_type_is_open_inside[name] if {
	some name, case in {
		"foil": {"keys": ["foil-faced"], "said": "vapor_open_inside", "n": 1},
		"bare board": {"keys": [], "said": "vapor_open_inside", "n": 0},
		"a type that says nothing": {"keys": ["foil-faced"], "said": "vented", "n": 0},
	}
	is := {"class": "insulation", "family": "polyiso", "keys": case.keys, "product": ""}
	board := object.union(desk.own(31, "PB-7"), is)
	rows := [
		desk.row(31, "PB-7", {"group": "W7", "role": "insulation", "items": [board, _batt, _film]}),
		desk.row(4, "", {
			"sheet": "T", "table": "t2", "mark": "", "group": "", "items": [],
			"signals": [desk.said(4, case.said, "layers")],
			"texts": {"type": "W7", "layers": "panel; open sheet; plywood; open to the room"},
		}),
	]
	found := two_barriers.findings with input as desk.document(rows, [], [])
	count(found) == case.n
}

# With its joints taped, foil on boards is one tight layer; with open joints it may dry between them.
test_foil_board_with_taped_joints[remark] if {
	some remark, n in {"all seams taped": 1, "seams not taped": 0, "loose": 0}
	board := object.union(desk.own(31, "PB-7"), {
		"class": "insulation",
		"family": "polyiso",
		"keys": ["foil-faced"],
		"product": "",
	})
	row := desk.row(31, "PB-7", {"role": "insulation", "items": [board, _batt, _film], "texts": {"remark": remark}})
	found := two_barriers.findings with input as desk.document([row], [], [])
	count(found) == n
}

# The wall type says that nothing tight lies inside, and a row of a film puts one there, though no studs are filled.
test_film_row_of_a_wall_that_is_open_inside[name] if {
	some name, case in {
		"open inside": {"open": true, "side": "room side of the studs", "count": 1},
		"not said": {"open": false, "side": "room side of the studs", "count": 0},
		"film elsewhere": {"open": true, "side": "top of the footing", "count": 0},
	}
	film := object.union(desk.own(30, "VR-1"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	told := [
		object.union(desk.said(4, "vapor_open_inside", "layers"), {"text": "no foil inside"}),
		object.union(desk.said(4, "vapor_closed_inside", "layers"), {"no": true, "text": "no foil"}),
	]
	rows := [
		desk.row(30, "VR-1", {"role": "film", "group": "W7", "items": [film], "texts": {"substrate": case.side}}),
		desk.row(31, "R-01", {"group": "W7", "items": [desk.own(31, "R-01")]}),
		desk.row(4, "W7", {
			"sheet": "T",
			"table": "t2",
			"mark": "W7",
			"texts": {"layers": "panel, wool, sheet, board, bare studs"},
			"signals": [one | some one in told; case.open],
		}),
	]
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	found := two_barriers.findings with input as desk.document(rows, [tight], [])
	count(found) == case.count
	every f in found { f.message == "VR-1 lies inside of R-01, but wall type W7 says \"no foil inside\"" }
}

# The wall type is told layer by layer, with a tight sheet and nothing tight inside of it, and a row puts a film there.
_added(film, layers, more) := found if {
	own := object.union(desk.own(23, "VR-9"), object.union({"product": ""}, film))
	row := object.union(desk.row(23, "VR-9", {"items": [own], "group": "W5", "role": "film"}), more)
	rows := [object.union(desk.row(n, "X-1", {}), {"table": "list"}) | some n in numbers.range(35, 42)]
	doc := object.union(
		desk.document(array.concat([row], rows), [], []),
		{"profiles": [wall.profile(layers, wall.cold, {})]},
	)
	found := two_barriers.findings with input as doc
}

_foil_film := {"text": "foil on kraft", "family": "foil-vapor-retarder", "class": "membrane"}

_room_side := {"texts": {"substrate": "studs, room side"}}

test_film_that_the_section_has_not if {
	found := _added(_foil_film, [wall.gypsum, wall.sheathing, wall.sheet, wall.wool], _room_side)
	{f.message | some f in found} == {"foil on kraft lies inside of AB-1, and wall type W5 has no barrier there"}
	{f.line | some f in found} == {"W!23"}
}

test_film_that_the_section_may_have if {
	layers := [wall.gypsum, wall.sheathing, wall.sheet]
	count(_added(_foil_film, array.concat([wall.film], layers), _room_side)) == 0 # it is that of the wall
	count(_added(_foil_film, [wall.gypsum, wall.sheathing, wall.open_sheet], _room_side)) == 0 # it dries outward
	tight := [wall.gypsum, wall.sheathing, wall.sheet]
	count(_added(_foil_film, tight, {"texts": {"substrate": "studs"}})) == 0 # on which side
	count(_added(_foil_film, tight, object.union(_room_side, {"group": "W6"}))) == 0

	count(_added(_foil_film, layers, {"texts": {"substrate": "studs"}})) == 0 # on which side
	count(_added(_foil_film, layers, object.union(_room_side, {"group": "W6"}))) == 0
	smart := {"text": "SR-2", "family": "vapor-retarder-smart", "class": "membrane"}
	count(_added(smart, layers, _room_side)) == 0
}

# The wall type has a smart retarder, by which it dries to the room; a film, foil or vinyl there takes that away.
test_film_where_a_smart_retarder_is[name] if {
	some name, case in {
		"foil behind the lining": {"text": "foil behind drywall", "slot": "touches", "layer": "vapor-retarder-smart", "n": 1},
		"in the column of the inner side": {"text": "foil", "slot": "behind", "layer": "vapor-retarder-smart", "n": 1},
		"a slip sheet": {"text": "foil", "slot": "touches", "layer": "vapor-retarder-smart", "n": 0},
		"paint inside": {"text": "foil behind drywall", "slot": "touches", "layer": "latex-paint", "n": 0},
		"foil there too": {"text": "foil behind drywall", "slot": "touches", "layer": "foil-vapor-retarder", "n": 0},
		"taken out": {"text": "foil behind drywall was removed", "slot": "touches", "layer": "vapor-retarder-smart", "n": 0},
	}
	film := object.union(desk.own(30, "foil"), {
		"id": "W!30/f",
		"slot": case.slot,
		"text": "foil",
		"clause": case.text,
		"family": "foil-vapor-retarder",
		"class": "membrane",
		"product": "",
	})
	inner := {"slot": "layers", "family": case.layer, "product": "", "text": "inner sheet"}
	layer := object.union(desk.own(4, "SR"), inner)
	rows := [
		desk.row(30, "VP-1", {"group": "W7", "items": [desk.own(30, "VP-1"), film], "texts": {"touches": case.text}}),
		desk.row(4, "W7", {
			"sheet": "T",
			"table": "t2",
			"mark": "W7",
			"texts": {"layers": "panel, wool, open sheet, studs with batts, inner sheet, board"},
			"items": [layer],
		}),
	]
	found := two_barriers.findings with input as desk.document(rows, [], [])
	{f.message | some f in found} == {message |
		case.n == 1
		message := "foil lies inside of wall type W7, whose inner sheet is to let it dry to the room"
	}
}

# In a zone whose table has no such layer inside, the film is the one to leave out, and the finding stands at it.
test_film_that_the_zone_bars[note] if {
	some note, want in {
		"Climate zone 2A": {"line": "W!36", "severity": "warning"},
		"Climate zone 5A": {"line": "W!40", "severity": "note"},
	}
	doc := wall.document([wall.profile([wall.gypsum, wall.film, wall.batt, wall.sheet, wall.wool], wall.mild, {})], {})
	found := two_barriers.findings with input as object.union(doc, {"project": object.union(doc.project, {"notes": [{
		"text": note,
		"at": {"sheet": "N", "row": 4, "cell": "A4"},
	}]})})
	{f.line | some f in found} == {want.line}
	{f.severity | some f in found} == {want.severity}
}

# A word with a colon places what stands right after it on the room side, and nothing further on; the words that bar the
# film are told, not those of the paint.
test_film_led_by_its_side[text] if {
	painted := object.union(desk.said(4, "vapor_open_inside", "layers"), {"text": "painted plaster"})
	barred := object.union(desk.said(4, "vapor_open_inside", "layers"), {"text": "no retarder"})
	denied := object.union(desk.said(4, "vapor_closed_inside", "layers"), {"no": true, "text": "no retarder"})
	wall := desk.row(4, "", {
		"id": "T!4", "sheet": "T", "table": "t2", "mark": "EW-3", "items": [],
		"texts": {"layers": "brick / wool / sheet / block"},
		"signals": [painted, denied, barred],
	})
	some text, n in {
		"Room side: poly on the furring": 1,
		"see 4/A5; interior - poly on the furring": 0,
		"Warm side: poly on the furring": 1,
		"Inside: paint. Slab: poly on the furring": 0,
		"Outside: poly on the furring": 0,
	}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	film := object.union(_film, {"slot": "remark", "clause": "poly on the furring"})
	row := desk.row(23, "R-01", {"group": "EW-3", "items": [desk.own(23, "R-01"), film], "texts": {"remark": text}})
	found := two_barriers.findings with input as desk.document([row, wall], [tight], [])
	count(found) == n
	every one in found { endswith(one.message, `says "no retarder"`) }
}

# The kraft of the batts is that of the wall type, whose outside is open: the strip at the window makes no second
# barrier.
test_facing_of_the_wall_type[film] if {
	some film, n in {"kraft": 0, "Larch R-21 kraft": 0, "foil": 1}
	tight := desk.product("R-01", 6, {"figures": {"vapor_ng": desk.figure(1.7, "1.7", "ng")}})
	open := desk.product("V-1", 7, {"figures": {"vapor_ng": desk.figure(1030, "18", "perm")}})
	own := object.union(desk.own(24, film), {"family": "kraft-facer", "keys": [], "product": ""})
	facing := object.union(_list_film, {"text": "kraft", "family": "kraft-facer"})
	rows := [
		desk.row(23, "R-01", {"group": "T2", "items": [desk.own(23, "R-01")]}),
		desk.row(24, film, {
			"group": "T2",
			"role": "insulation",
			"items": [own],
			"texts": {"substrate": "room side of studs"},
		}),
		object.union(desk.row(40, "R-01", {"items": [_list_open, _list_batt, facing]}), {
			"table": "list",
			"mark": "",
			"texts": {"type": "T2", "layers": "as built"},
			"role": "other",
		}),
	]
	notes := {"project": {"limits": [], "signals": [{"id": "one_tight_layer", "no": false}]}}
	found := two_barriers.findings with input as object.union(desk.document(rows, [tight, open], []), notes)
	count([one | some one in found; one.line == "W!24"]) == n
}
