package vapor.told_side_test

import data.lib.desk_test as desk
import data.vapor.told_side

_found(type, clause, more) := found if {
	product := desk.product("JS-1", 5, {"texts": {"type": type}})
	item := object.union(desk.own(12, "JS-1"), {"clause": clause})
	row := object.union(desk.row(12, "JS-1", {"items": [item]}), more)
	found := told_side.findings with input as desk.document([row], [product], [])
}

test_fires_in_full if {
	_found("frame tape, warm side", "JS-1 at the exterior face", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12"],
		"message": `JS-1, by its data for the room side, goes on the weather side ("JS-1 at the exterior face")`,
		"related": [{"product": "JS-1", "cells": ["B5", "C5"], "what": "its data on the side"}],
		"facts": [desk.own(12, "JS-1").id],
	}}
}

test_told_by_the_row if {
	count(_found("frame tape for the outside face", "JS-1", {"texts": {"substrate": "CMU jamb, inner face"}})) == 1
}

test_silent[name] if {
	some name, case in {
		"the right side": ["frame tape, warm side", "JS-1 on the interior side", {}],
		"no side in the data": ["frame tape", "JS-1 at the exterior face", {}],
		"both sides in the data": ["frame tape, inner face or outer face", "JS-1 at the exterior face", {}],
		"no side in the row": ["frame tape, warm side", "JS-1", {}],
		"the cell of the strip counts": [
			"frame tape, warm side",
			"JS-1 on the room side",
			{"texts": {"place": "Storefront, outer face"}},
		],
		"place and substrate differ": [
			"frame tape, warm side",
			"JS-1",
			{"texts": {"place": "Storefront, outer face", "substrate": "stud, inner face"}},
		],
		"parapet": ["frame tape, weather side", "JS-1", {"place": "Parapet", "texts": {"place": "Parapet, inner face"}}],
		"struck": ["frame tape, warm side", "JS-1 at the exterior face", {"struck": true}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}

# The film that keeps room vapor back may be told by another column of its data, or by the notes alone.
_film(suits, notes, more) := found if {
	product := desk.product("JS-1", 5, {"texts": {"type": "polyethylene film", "suits": suits}})
	item := object.union(desk.own(12, "JS-1"), {"clause": "JS-1", "family": "polyethylene-sheet"})
	row := object.union(desk.row(12, "JS-1", {"items": [item]}), more)
	doc := desk.document([row], [product], [])
	noted := [{"text": note, "at": {"sheet": "W", "row": 30, "cell": "A30"}} | some note in notes]
	found := told_side.findings with input as object.union(doc, {"project": {"notes": noted}})
}

_outboard := {"texts": {"substrate": "outboard of the sheathing"}}

test_film_by_its_uses if count(_film("warm side only", [], _outboard)) == 1

test_film_by_the_notes if {
	{f.message | some f in _film("", ["Rain screens. Vapor barrier on the room side, taped."], _outboard)} == {concat("", [
		"JS-1, by the notes for the room side, goes on the weather side ",
		`("outboard of the sheathing")`,
	])}
}

test_film_silent[name] if {
	some name, case in {
		"notes on both sides": ["", ["Vapor barrier room side. Vapor retarder outer face of the freezer."], _outboard],
		"notes of something else": ["", ["Prime the inner face."], _outboard],
		"around a freezer": [
			"warm side only",
			[],
			object.union(_outboard, {"place": "Freezer 2"}),
		],
		"on the right side": ["", ["Vapor barrier on the room side"], {"texts": {"substrate": "inboard of the studs"}}],
	}
	count(_film(case[0], case[1], case[2])) == 0
}

# Data may name the side by the code of the wall.
test_film_by_the_wall[name] if {
	some name, case in {
		"on the weather side": ["inside of EW-3 only", _outboard, 1],
		"on the right side": ["inside of W7 only", {"texts": {"substrate": "room side of the studs"}}, 0],
		"no wall": ["inside of PT-2 only", _outboard, 0],
	}
	count(_film(case[0], [], case[1])) == case[2]
}
