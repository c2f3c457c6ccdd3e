package performance.film_wet_test

import data.lib.desk_test as desk
import data.performance.film_wet

_row(mm, text, more) := desk.row(12, "LM-1", object.union(
	{"figures": {"thickness_mm": desk.figure(mm, text, "mil")}, "texts": {"thickness": text}},
	more,
))

_told(mm, text, figures) := desk.product("LM-1", 7, {
	"family": "fluid-applied-acrylic-air-barrier",
	"figures": object.union({"thickness_mm": desk.figure(mm, text, "mil")}, figures),
})

_half := {"solids": desk.figure(0.5, "50 %", "%")}

_found(row, product) := found if {
	found := film_wet.findings with input as desk.document([row], [product], [])
}

test_fires_in_full if {
	_found(_row(1.016, "40 mil wet", {}), _told(0.762, "30 mil dry", _half)) == {{
		"line": "W!12",
		"cells": ["C12", "D12", "L12"],
		"message": concat(" ", [
			"LM-1 (rubberized-asphalt-membrane) at 40 mil wet dries to 20 mil (50 % solids);",
			"its data asks for 30 mil dry",
		]),
		"related": [{"product": "LM-1", "cells": ["D7"], "what": "its data"}],
	}}
}

test_without_solids if {
	[f.message | some f in _found(_row(0.508, "20 mil WFT", {}), _told(0.762, "30 mil DFT", {}))] == [concat(" ", [
		"LM-1 (rubberized-asphalt-membrane) at 20 mil wet dries to 20 mil at most;",
		"its data asks for 30 mil dry",
	])]
	count(_found(_row(1.016, "40 mil wet", {}), _told(0.762, "30 mil dry", {}))) == 0
}

test_data_with_the_dry_film_first if {
	both := _told(0.762, "30 mil dry; 50 % solids, 60 wet", _half)
	count(_found(_row(1.016, "40 mil wet", {}), both)) == 1
	count(_found(_row(1.524, "60 mil wet", {}), both)) == 0
}

test_silent[name] if {
	thin := _row(1.016, "40 mil wet", {})
	dry := _told(0.762, "30 mil dry", _half)
	some name, case in {
		"just enough": [_row(1.524, "60 mil wet", {}), dry],
		"all solids": [_row(0.762, "30 mil wet", {}), _told(0.762, "30 mil dry", {"solids": desk.figure(1, "100%", "%")})],
		"read dry": [_row(0.762, "30 mil dry", {}), dry],
		"wet and dry": [_row(1.016, "40 mil wet, 20 dry", {}), dry],
		"not said": [_row(1.016, "40 mil", {}), dry],
		"asked for wet": [thin, _told(1.016, "40 mil wet", _half)],
		"not said what is asked for": [thin, _told(0.762, "30 mil", _half)],
		"of each coat": [_row(0.762, "30 mil wet each", {}), dry],
		"two coats by the remark": [_row(1.016, "40 mil wet", {"texts": {"remark": "in 2 coats"}}), dry],
		"struck": [_row(1.016, "40 mil wet", {"struck": true}), dry],
		"no data": [thin, desk.product("LM-1", 7, {"figures": {}})],
	}
	count(_found(case[0], case[1])) == 0
}

# The heading says what the cells do not.
_headed(heading) := object.union(doc, {"reading": {"tables": [table]}}) if {
	doc := desk.document([_row(1.016, "40", {})], [_told(0.762, "30 mil dry", _half)], [])
	column := {"letter": "D", "slot": "thickness", "heading": heading}
	table := object.union(doc.reading.tables[0], {"columns": [column]})
}

test_by_heading if {
	count(film_wet.findings) == 1 with input as _headed("WFT (mil)")
	count(film_wet.findings) == 0 with input as _headed("Mil")
	count(film_wet.findings) == 0 with input as _headed("Film, wet / dry")
}

# The film told in a remark, and by how far a volume goes.
_words(mm, text, remark) := desk.row(12, "LM-1", {
	"figures": {"wet_mm": desk.figure(mm, text, "mil")},
	"texts": {"remark": remark},
})

test_film_of_a_remark if {
	dry := _told(0.762, "30 mil dry", _half)
	count(_found(_words(0.762, "30 mil", "single pass, 30 mil wet"), dry)) == 1
	count(_found(_words(1.524, "60 mil", "60 mil wet in one pass"), dry)) == 0
	count(_found(_words(0.762, "30 mil", "two coats, 30 wet each"), dry)) == 0
	count(_found(_words(0.381, "15 mil", "two coats, 15 wet each"), dry)) == 1
	count(_found(_words(0.381, "15 mil", "coats of 15 wet until it is full"), dry)) == 0
	count(_found(_words(0.762, "30 mil", "30 wet, next day 30 wet"), dry)) == 0
	read := {"figures": {"film_mm": desk.figure(0.762, "30 mil", "mil")}}
	count(_found(object.union(_words(0.762, "30 mil", "30 wet, 30 dry read"), read), dry)) == 0
}

test_film_by_coverage if {
	found := _found(_words(0.4074583, "1 gal covers 100 sf", ""), _told(0.762, "30 mil dry", _half))
	[f.message | some f in found] == [concat(" ", [
		"LM-1 (rubberized-asphalt-membrane) at 1 gal covers 100 sf (16 mil wet) dries to 8.02 mil (50 % solids);",
		"its data asks for 30 mil dry",
	])]
}

test_data_that_says_dry_beside_the_figure[name] if {
	row := _words(0.762, "30 mil", "30 mil wet")
	bare := _told(0.762, "30", _half)
	some name, case in {
		"in a remark": [object.union(bare, {"texts": {"remark": "30 mil dry, 50% solids"}}), 1],
		"another figure": [object.union(bare, {"texts": {"remark": "130 mil dry"}}), 0],
		"nowhere": [bare, 0],
	}
	count(_found(row, case[0])) == case[1]
}

# A film of all coats together is not taken once more for each of them.
test_film_of_all_coats[remark] if {
	dry := _told(0.762, "30 mil dry", _half)
	some remark, n in {
		"two coats, 30 mil wet in all": 1,
		"combined 30 wet, two coats": 1,
		"two coats of 30 mil wet; total area 40 sf": 0,
		"two coats, 30 mil wet": 0,
		"two coats, 30 mil wet, total 40 sf": 0,
	}
	count(_found(_words(0.762, "30 mil", remark), dry)) == n
}

test_data_with_the_wet_film if {
	data_wet := _told(1.524, "60 mil wet", {})
	[f.message | some f in _found(_row(0.305, "12 mil wet", {}), data_wet)] == [concat(" ", [
		"LM-1 (rubberized-asphalt-membrane) is put on at 12 mil wet;",
		"its data asks for 60 mil wet",
	])]
	count(_found(_row(1.524, "60 mil wet", {}), data_wet)) == 0
	count(_found(_row(0.762, "30 mil wet", {"texts": {"remark": "in 2 coats"}}), data_wet)) == 0
	count(_found(_row(0.762, "30 mil wet each", {}), data_wet)) == 0
}

# Data that tells the wet film beside the figure asks for that one.
test_data_that_says_wet_beside_the_figure[name] if {
	row := _words(0.762, "30", "gauged 30 wet")
	bare := _told(1.27, "50", {"solids": desk.figure(0.96, "96 %", "%")})
	some name, case in {
		"in a remark": [object.union(bare, {"texts": {"remark": "50 wet least, one pass"}}), 1],
		"with its unit": [object.union(bare, {"texts": {"remark": "50 mils WFT"}}), 1],
		"another figure": [object.union(bare, {"texts": {"remark": "150 wet"}}), 0],
		"both films": [object.union(bare, {"texts": {"remark": "50 mil dry from 50 wet"}}), 1],
		"nowhere": [bare, 0],
	}
	count(_found(row, case[0])) == case[1]
}

test_says_the_wet_film_asked_for if {
	asks := object.union(_told(1.27, "50", {}), {"texts": {"remark": "50 wet least"}})
	[f.message | some f in _found(_words(0.762, "30", "gauged 30 wet"), asks)] == [concat(" ", [
		"LM-1 (rubberized-asphalt-membrane) is put on at 30 mil wet;",
		"its data asks for 50 mil wet",
	])]
	count(_found(_words(1.27, "50", "gauged 50 wet"), asks)) == 0
}

# Both films in one cell: more than the solids leave is asked about.
test_both_films[name] if {
	some name, case in {
		"too much by words": ["50 wet / 40 dry", "Film", 1],
		"too much by the heading": ["60 / 45", "Film WFT/DFT", 1],
		"of coats": ["2 x 30 = 60 / 45", "Film WFT/DFT", 1],
		"as the solids leave": ["60 / 30", "Film WFT/DFT", 0],
		"within rounding": ["60 / 32", "Film WFT/DFT", 0],
		"dry first": ["30 / 60", "Film DFT/WFT", 0],
		"no heading": ["60 / 45", "Thickness", 0],
		"a date": ["6/4/5", "Film WFT/DFT", 0],
	}
	row := object.union(_row(1.524, case[0], {}), {"table": "t1"})
	table := {"id": "t1", "columns": [{"letter": "D", "heading": case[1]}]}
	doc := object.union(desk.document([row], [_told(0.508, "20", _half)], []), {"reading": {"tables": [table]}})
	found := film_wet.findings with input as doc
	count([f | some f in found; contains(f.message, "and the row says")]) == case[2]
}
