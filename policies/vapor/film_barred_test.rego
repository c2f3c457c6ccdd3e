package vapor.film_barred_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.vapor.film_barred

_poly := bench.item("material", "poly film", "polyethylene-sheet", "sheet", ["polyethylene-film"])

_at := {"sheet": "Notes", "row": 3, "cell": "A3"}

_row(group, texts, item) := bench.line("W!12", 12, {"group": group, "texts": texts, "items": [item]})

_inside := {"material": "poly film, room side of studs"}

_found(row, note) := found if {
	notes := {"project": {"notes": [{"text": note, "at": _at}]}}
	found := film_barred.findings with input as object.union(desk.document([row], [], []), notes)
}

test_whole_message if {
	found := _found(_row("K4", _inside, _poly), "K3 and K4: no vapor retarder on the room side.")
	{f.message | some f in found} == {concat("", [
		"poly film goes on the room side of K4, but that wall is to have none: ",
		"\"K3 and K4: no vapor retarder on the room side\"",
	])}
	{f.related[0].at | some f in found} == {_at}
}

test_in_other_words if {
	every note in [
		"K2 gets the open sheet; K1, K4 shall have no poly inside",
		"K4 stone, 3\" wool, tight sheet, block, paint. No VR inside.",
		"K4 is built without a vapor barrier inside.",
	] {
		count(_found(_row("K4", _inside, _poly), note)) == 1
	}
}

test_silent[note] if {
	some note in [
		"K3: no vapor retarder inside", # another wall
		"K4 gets the film; K3: no film inside",
		"No film inside.", # of no wall
		"K4: no vapor retarder inside unless the studs are filled",
		"K4: no vapor retarder outside",
		"K4: no gaps in the vapor retarder inside",
		"K3 stone, sheet, block. No VR inside. See K4.",
		"",
	]
	count(_found(_row("K4", _inside, _poly), note)) == 0
}

test_rows_that_have_none if {
	note := "K4: no vapor retarder inside"
	count(_found(_row("K4", {"material": "poly film over the slab edge"}, _poly), note)) == 0
	count(_found(_row("K4", {"material": "poly film inside, omitted"}, _poly), note)) == 0
	count(_found(_row("", _inside, _poly), note)) == 0
	count(_found(_row("K4", _inside, object.union(_poly, {"polarity": "no"})), note)) == 0
	count(_found(_row("K4", {"material": "sheet, room side"}, bench.sbs), note)) == 0
}

test_of_the_build_up if {
	wall := bench.line("T!4", 4, {
		"sheet": "T",
		"table": "t2",
		"mark": "K4",
		"cells": {"remark": "D4"},
		"texts": {"layers": "block; sheet; wool; stone", "remark": "No poly inside."},
	})
	doc := object.union(bench.document([], []), {"lines": [_row("K4", _inside, _poly), wall]})
	{f.related[0].cells | some f in film_barred.findings with input as doc} == {["D4"]}
}

_wall := {"material": "lining, room side of studs"}

# What a note keeps out of walls by its own name, and the wall beside the place.
test_kept_out_by_name[name] if {
	some name, case in {
		"poly": {"note": "No foil or poly on any outside wall K4.", "family": "polyethylene-sheet", "n": 1},
		"vinyl": {"note": "No vinyl cov. in K3 and K4 walls.", "family": "vinyl-wall-covering", "n": 1},
		"another material": {"note": "No vinyl in K3 and K4 walls.", "family": "polyethylene-sheet", "n": 0},
		"another wall": {"note": "No vinyl cov. on K5 walls.", "family": "vinyl-wall-covering", "n": 0},
		"a condition": {"note": "No vinyl on K4 walls unless vented.", "family": "vinyl-wall-covering", "n": 0},
		"no wall": {"note": "K4: no vinyl samples yet.", "family": "vinyl-wall-covering", "n": 0},
	}
	item := bench.item("material", "lining", case.family, "sheet", [])
	every group in ["K4", "Tower E / K4"] { count(_found(_row(group, _wall, item), case.note)) == case.n }
	count(_found(_row("Tower E", _wall, item), case.note)) == 0
}
