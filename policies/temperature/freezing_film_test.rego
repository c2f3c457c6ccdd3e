package temperature.freezing_film_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.freezing_film

_film := base.own(base.item(
	"material", "LA-2", "fluid-applied-acrylic-air-barrier", "membrane",
	["acrylic", "water-borne"],
))

_data(text) := object.union(base.product("LA-2", {"texts": {"apply": text}}), {"cells": {"apply": "G7"}})

_found(text, row, nights) := _with(text, row, nights, [])

_with(text, row, nights, checks) := found if {
	line := bench.sheet(object.union({"items": [_film]}, row))
	doc := bench.document([line], [_data(text)], [bench.window(checks, {
		"from": "2026-10-21",
		"to": "2026-10-21",
		"night_frost": nights,
	})])
	found := freezing_film.findings with input as doc
}

test_whole_finding if {
	some f in _found("5 °C and rising; no frost for 48 h", {}, 0.4)
	f.message == concat(" ", [
		"LA-2 (fluid-applied-acrylic-air-barrier) must not freeze for 48 h: on 21 Oct 2026 in Milwaukee 40% of nights",
		"are below freezing, so that one of 2 is so with odds of 64%",
	])
	f.cells == ["C12", "K12"]
	f.line == "W!12"
}

test_ways_to_say_it[text] if {
	some text in [
		"40 F up, keep from freezing 2 days",
		"Not below 4 C. Must not freeze within 36 hours",
		"4 °C; 48 hrs frost-free",
		"protected from frost over 2 nights",
	]
	count(_found(text, {}, 0.4)) == 1
}

test_at_the_limit if {
	count(_found("no freeze 24 hr after", {}, 0.5)) == 1
	count(_found("no freeze 24 hr after", {}, 0.49)) == 0
	count(_found("no freeze 72 hr after", {}, 0.2)) == 0
}

test_silent[name] if {
	some name, tc in {
		"no time told": ["frost-free; 25 F min", {}],
		"a time of another thing": ["no frost on the face, recoat 24 h", {}],
		"heated": ["no frost for 48 h", {"signals": [bench.signal("heated", "shelter", "tent, heated")]}],
		"the night was read": ["no frost for 48 h", {"figures": {"reading_night_c": bench.figure(2, 2, "2", "°C")}}],
		"a sheet": ["no frost for 48 h", {"items": [base.own(bench.fm_1)]}],
	}
	count(_found(tc[0], tc[1], 0.6)) == 0
}

test_told_with_the_cold_days if {
	cold := bench.check("membrane", "LA-2", 5, "5 °C", 0.7, 0.3, {})
	count(_with("no frost for 48 h", {}, 0.6, [cold])) == 0
}

_after(text, mean, row) := found if {
	line := bench.sheet(object.union({"items": [_film]}, row))
	check := bench.check("membrane", "LA-2", 4.44, "40 °F", 0.2, 0.8, {"item": _film.id})
	doc := bench.document([line], [_data(text)], [bench.window([check], {"night_frost": 0.3, "mean_min_c": mean})])
	found := freezing_film.findings with input as doc
}

test_as_warm_after_the_work if {
	{f.message | some f in _after("40 °F and rising, and for 24 hours after", 0.6, {})} == {concat(" ", [
		"LA-2 (fluid-applied-acrylic-air-barrier) must stay as warm as its data asks (\"40 °F\") for 24 hours after:",
		"on 19 Jan 2027 in Milwaukee the nights go down to 34 °F",
	])}
}

test_after_the_work[name] if {
	some name, tc in {
		"two nights": ["40 °F min. and for the 2 nights following", 0, {}, 1],
		"mean near the limit": ["40 °F and up, for 24 h after", 2.5, {}, 0],
		"an hour": ["40 °F and up, for 4 h after", 0, {}, 0],
		"by day alone": ["40 °F and rising", 0, {}, 0],
		"heated": ["40 °F, for 24 h after", 0, {"signals": [bench.signal("heated", "shelter", "tent, heated")]}, 0],
	}
	count(_after(tc[0], tc[1], tc[2])) == tc[3]
}

_on_night(low, row) := found if {
	night := object.union(bench.figure(low, low, "night", "°C"), {"at": {"sheet": "W", "row": 12, "cell": "O12"}})
	least := {"figures": {"apply_min_c": object.union(
		bench.figure(5, 5, "5 °C", "°C"),
		{"at": {"sheet": "P", "row": 4, "cell": "E4"}},
	)}}
	own := object.union(_film, {"product": "LA-2"})
	line := bench.sheet(object.union({"items": [own], "figures": {"reading_night_c": night}}, row))
	found := freezing_film.findings with input as bench.document([line], [base.product("LA-2", least)], [])
}

test_night_that_the_row_tells if {
	some f in _on_night(2, {})
	f.message == concat(" ", [
		"LA-2 (fluid-applied-acrylic-air-barrier) goes on from 5 °C, and dries by its water;",
		"the row tells of a night of 2 °C",
	])
	f.cells == ["C12", "K12", "O12"]
}

test_night_silent[name] if {
	dry := base.own(base.item("material", "LA-2", "fluid-applied-silicone-air-barrier", "membrane", ["silicone"]))
	some name, tc in {
		"as warm as asked": [4.6, {}],
		"frost, which another rule tells": [-1, {}],
		"heated": [2, {"signals": [bench.signal("heated", "shelter", "tent, heated")]}],
		"no water to dry": [2, {"items": [object.union(dry, {"product": "LA-2"})]}],
	}
	count(_on_night(tc[0], tc[1])) == 0
}
