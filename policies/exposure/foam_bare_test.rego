package exposure.foam_bare_test

import data.exposure.foam_bare
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_eps := base.item("material", "B-1", "eps", "insulation", ["polystyrene"])

_wool := base.item("material", "B-2", "mineral-wool", "insulation", ["mineral-fiber"])

_bare(item, days, more) := object.union(
	{
		"role": "insulation",
		"items": [item],
		"spans": {"bare_days": bench.span(days, days, days, "2026-05-03", "2026-08-20")},
	},
	more,
)

_found(line, products) := found if {
	found := foam_bare.findings with input as bench.document([bench.sheet(line)], products, [])
}

test_whole_finding if {
	_found(_bare(_eps, 109, {}), []) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "L12"],
		"message": concat(" ", [
			"B-1 (eps) stays bare 109 days (3 May to 20 Aug 2026); no limit is given, and polystyrene board usually may",
			"60 days",
		]),
		"severity": "warning",
		"related": [],
		"keys": {"days": 109, "allowed": 60},
	}}
}

test_by_kind[name] if {
	some name, tc in {
		"on the usual limit": {"item": _eps, "days": 60, "n": 0},
		"a day over": {"item": _eps, "days": 61, "n": 1},
		"wool": {"item": _wool, "days": 300, "n": 0},
	}
	count(_found(_bare(tc.item, tc.days, {}), [])) == tc.n
}

test_its_own_days if {
	wool := object.union(_wool, {"product": "FM-1"})
	product := bench.product({"figures": {"exposure_days": bench.figure(30, null, "30", "days")}})
	{f.severity | some f in _found(_bare(wool, 31, {}), [product])} == {"error"}
	count(_found(_bare(wool, 30, {}), [product])) == 0
}

test_silent[name] if {
	some name, more in {
		"indoors": {"signals": [bench.signal("indoors", "place", "inside")]},
		"in the studs": {"texts": {"place": "between the studs"}},
		"a sheet's row": {"role": "membrane"},
		"struck row": {"struck": true},
	}
	count(_found(_bare(_eps, 109, more), [])) == 0
}

test_a_cover_meanwhile_is_a_note if {
	kept := {"signals": [bench.signal("covered_otherwise", "remark", "tarps over the boards")]}
	{f.severity | some f in _found(_bare(_eps, 109, kept), [])} == {"note"}
}

test_past_the_makers_letter if {
	wool := object.union(_wool, {"product": "FM-1"})
	product := bench.product({"figures": {"exposure_days": bench.figure(30, null, "30", "days")}})
	letter := bench.limit("exposure_days", {"max": 50, "letter": "K-7", "text": "K-7 maker gives FM-1 50 days"})
	doc := bench.with_notes(bench.document([bench.sheet(_bare(wool, 77, {}))], [product], []), [letter], [])
	some f in foam_bare.findings with input as doc
	endswith(f.message, "the maker's letter allows 50 days")
}

_can := base.item("material", "F-4", "can-foam-sealant", "sealant", ["polyurethane-foam"])

_told(more) := object.union(
	{
		"role": "sealant",
		"items": [_can],
		"signals": [bench.signal("bare_for_long", "remark", "open through the winter")],
		"texts": {"remark": "open through the winter"},
	},
	more,
)

test_left_bare_in_words if {
	{f.message | some f in _found(_told({}), [])} == {concat(" ", [
		"F-4 (can-foam-sealant) lies bare for long (\"open through the winter\"),",
		"and foam turns to dust in the sun",
	])}
}

test_left_bare_and_silent[name] if {
	some name, more in {
		"wool": {"items": [_wool]},
		"indoors": {"signals": [
			bench.signal("bare_for_long", "remark", "open through the winter"),
			bench.signal("indoors", "remark", "indoors"),
		]},
		"nothing told": {"signals": []},
	}
	count(_found(_told(more), [])) == 0
}
