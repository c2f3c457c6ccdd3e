package data.wall_other_test

import data.data.wall_other
import data.lib.desk_test as desk

_layer(text, product, family, class, keys) := {
	"id": sprintf("W!40/%s", [text]),
	"slot": "layers",
	"text": text,
	"product": product,
	"tag": product,
	"family": family,
	"class": class,
	"keys": keys,
	"polarity": "yes",
	"relation": "",
	"at": {"sheet": "W", "row": 40, "cell": "B40"},
}

_wall(layers) := desk.row(40, "F1", {
	"items": layers,
	"mark": "F1",
	"table": "walls",
	"texts": {"layers": "drain mat / WP-5 / cast concrete"},
	"role": "other",
})

_foundation := [
	_layer("WP-5", "WP-5", "hot-rubberized-asphalt-waterproofing", "membrane", ["asphaltic"]),
	_layer("cast concrete", "", "cast-concrete", "substrate", ["cement-based"]),
]

_under(text, family, key) := object.union(_layer(text, "", family, "substrate", [key]), {
	"slot": "substrate",
	"at": {"sheet": "W", "row": 12, "cell": "E12"},
})

_plywood := _under("plywood", "osb-plywood-sheathing", "wood")

_found(product, under, layers, more) := found if {
	own := object.union(desk.own(12, product), {"class": "membrane", "family": "rubberized-asphalt-membrane"})
	row := object.union(desk.row(12, product, {"items": [own, under]}), object.union(
		{
			"group": "F1",
			"role": "membrane",
			"table": "schedule",
			"texts": {},
		},
		more,
	))
	found := wall_other.findings with input as desk.document([row, _wall(layers)], [], [])
}

test_fires if {
	found := _found("SA-2", _plywood, _foundation, {})
	count(found) == 1
	every f in found { endswith(f.message, "on plywood is no layer of F1, whose build-up has WP-5 and cast concrete") }
}

test_silent[name] if {
	some name, case in {
		"the sheet fits": ["WP-5", _plywood, _foundation, {}],
		"the backing fits": ["SA-2", _under("block", "concrete-masonry", "cement-based"), _foundation, {}],
		"no sheet in the type": ["SA-2", _plywood, [_foundation[1]], {}],
		"no backing in the type": ["SA-2", _plywood, [_foundation[0]], {}],
		"at an opening": ["SA-2", _plywood, _foundation, {"place": "Door jambs"}],
		"under a coping": ["SA-2", _plywood, _foundation, {"place": "Loading bay, coping"}],
		"another type": ["SA-2", _plywood, _foundation, {"group": "F2"}],
	}
	count(_found(case[0], case[1], case[2], case[3])) == 0
}
