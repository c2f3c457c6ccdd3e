package vapor.open_drawn_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.open_drawn

_drawn := [wall.gypsum, wall.film, wall.batt, wall.sheathing, wall.open_sheet, wall.panel]

_found(layers, ng, more) := found if {
	sheet := desk.product("KM-4", 6, {"figures": {"vapor_ng": desk.figure(ng, sprintf("%v", [ng]), "ng")}})
	own := object.union(desk.own(12, "KM-4"), {"class": "membrane", "family": "rubberized-asphalt-membrane"})
	row := object.union(
		desk.row(12, "KM-4", {"items": [own]}),
		object.union({"group": "W5", "role": "membrane"}, more),
	)
	drawn := wall.document([wall.profile(layers, wall.cold, {})], {})
	doc := object.union(drawn, {"lines": array.concat(drawn.lines, [row]), "products": [sheet]})
	found := open_drawn.findings with input as doc
}

test_fires if {
	found := _found(_drawn, 3, {})
	count(found) == 1
	every f in found { endswith(f.message, "wall type W5 has AB-3 there, which is vapor-open, with VR-1 inside") }
}

test_fires_once_where_the_wall_has_one_of_two if {
	other := object.union(wall.open_sheet, {"text": "AB-4"})
	found := _found([wall.gypsum, wall.film, wall.batt, wall.sheathing, wall.open_sheet, other], 3, {})
	count(found) == 1
	every f in found { contains(f.message, "has AB-3 there") }
}

test_fires_by_the_column_of_types if count(_found(_drawn, 3, {"group": "", "texts": {"type": " W5"}})) == 1

test_silent[name] if {
	some name, case in {
		"an open sheet": [_drawn, 900, {}],
		"another wall": [_drawn, 3, {"group": "W6"}],
		"no film inside": [[wall.gypsum, wall.batt, wall.sheathing, wall.open_sheet], 3, {}],
		"film without insulation": [[wall.film, wall.sheathing, wall.open_sheet], 3, {}],
		"drawn tight": [[wall.film, wall.batt, wall.sheathing, wall.sheet], 3, {}],
		"at an opening": [_drawn, 3, {"place": "Door jambs"}],
		"a bead": [_drawn, 3, {"role": "sealant"}],
		"a strip beside a frame": [_drawn, 3, {"role": "transition"}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}

test_kraft_inside_is_asked_about if {
	kraft := wall.layer(36, "kraft face", "kraft-facer", "film", 50)
	drawn := [wall.gypsum, kraft, wall.batt, wall.sheathing, wall.open_sheet, wall.panel]
	{f.severity | some f in _found(drawn, 3, {})} == {"warning"}
	{f.severity | some f in _found(_drawn, 3, {})} == {"error"}
	count(_found(drawn, 900, {})) == 0
}

test_fires_by_the_end_of_the_place if {
	count(_found(_drawn, 3, {"group": "", "place": "Hall E, W5"})) == 1
	count(_found(_drawn, 3, {"group": "", "place": "Hall E, W6"})) == 0
}

# The column of build-ups may name the wall; a detail at an opening is no field, unless it goes over a whole part.
test_fires_by_the_column_of_walls[refs] if {
	some refs, n in {"Main wall": 1, "Door head, whole panel": 1, "Door head": 0, "Base, typ.": 0}
	count(_found(_drawn, 3, {"group": "", "texts": {"layers": "W5"}, "refs": [refs]})) == n
	count(_found(_drawn, 3, {"group": "", "texts": {"layers": "W6"}, "refs": [refs]})) == 0
}
