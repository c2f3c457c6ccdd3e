package performance.film_thin_test

import data.lib.desk_test as desk
import data.performance.film_thin

_film(mm, text) := object.union(desk.figure(mm, text, "mil"), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})

_product(more) := desk.product("FA-1", 7, object.union(
	{
		"family": "fluid-applied-stpe-air-barrier",
		"figures": {"thickness_mm": desk.figure(0.635, "25 mil dry", "mil")},
	},
	more,
))

_found(figures, more, product) := found if {
	row := desk.row(12, "FA-1", object.union({"figures": figures}, more))
	found := film_thin.findings with input as desk.document([row], [product], [])
}

test_fires_in_full if {
	_found({"film_mm": _film(0.508, "20 mil")}, {}, _product({})) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"The dry film of FA-1 (rubberized-asphalt-membrane) was read at 20 mil;",
			"its data asks for 25 mil dry",
		]),
		"related": [{"product": "FA-1", "cells": ["D7"], "what": "its data"}],
	}}
}

test_data_of_both_films if {
	both := desk.figure(0.635, "42 wet / 25 dry mil", "mil")
	count(_found({"film_mm": _film(0.508, "20 mil")}, {}, _product({"figures": {"thickness_mm": both}}))) == 1
}

test_any_coat_whose_data_asks_for_a_dry_film if {
	paint := {"family": "latex-paint", "class": "coating"}
	coat := object.union(paint, {"figures": {"thickness_mm": desk.figure(0.635, "25 mil dry", "mil")}})
	bare := object.union(paint, {"figures": {"thickness_mm": desk.figure(0.635, "25 mil", "mil")}})
	count(_found({"film_mm": _film(0.508, "20 mil")}, {}, _product(coat))) == 1
	count(_found({"film_mm": _film(0.508, "20 mil")}, {}, _product(bare))) == 0
}

test_silent[name] if {
	thin := {"film_mm": _film(0.508, "20 mil")}
	some name, case in {
		"just enough": [{"film_mm": _film(0.635, "25 mil")}, {}, _product({})],
		"within rounding": [{"film_mm": _film(0.62, "0.62 mm")}, {}, _product({})],
		"no reading": [{}, {}, _product({})],
		"data has no thickness": [thin, {}, object.remove(_product({}), ["figures"])],
		"data of the wet film": [
			thin,
			{},
			_product({"figures": {"thickness_mm": desk.figure(0.635, "25 mil wet", "mil")}}),
		],
		"a sheet": [thin, {}, _product({"family": "rubberized-asphalt-membrane"})],
		"struck": [thin, {"struck": true}, _product({})],
	}
	count(_found(case[0], case[1], object.union({"figures": {}}, case[2]))) == 0
}
