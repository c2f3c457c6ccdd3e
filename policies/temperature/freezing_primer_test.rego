package temperature.freezing_primer_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.freezing_primer

_primer := bench.check("primer", "P-2", 4, "4 °C", 0.2, 0.83, {"keys": ["water-borne"]})

_april(nights) := {"from": "2026-04-13", "to": "2026-04-13", "night_frost": nights}

_found(checks, signals, nights) := found if {
	doc := bench.document([bench.sheet({"signals": signals})], [_told], [bench.window(checks, _april(nights))])
	found := freezing_primer.findings with input as doc
}

_told := base.product("P-3", {"signals": [base.said("keep_from_freezing", "do not let freeze")]})

test_whole_finding if {
	_found([_primer], [], 0.71) == {{
		"line": "W!12",
		"cells": ["F12", "K12", "P12"],
		"message": concat(" ", [
			"Primer P-2 must be dry before night: on 13 Apr 2026 in Milwaukee 71% of nights",
			"are below freezing",
		]),
		"severity": "note",
		"facts": [" apply_min_c"],
	}}
}

test_said_of_the_product if {
	check := object.union(_primer, {"keys": [], "product": "P-3"})
	{f.severity | some f in _found([check], [], 0.8)} == {"warning"}
	{f.severity | some f in _found([check], [], 0.79)} == {"note"}
}

test_hours_without_frost if {
	told := base.product("P-4", {"signals": [base.said("frost_free_hours", "frost free for 36 h")]})
	check := object.union(_primer, {"product": "P-4"})
	doc := bench.document([bench.sheet({})], [told], [bench.window([check], _april(0.5))])
	{f.severity | some f in freezing_primer.findings} == {"warning"} with input as doc
}

test_at_the_limit if {
	count(_found([_primer], [], 0.5)) == 1
	count(_found([_primer], [], 0.49)) == 0
}

test_told_with_a_cold_sheet if {
	count(_found([_primer, bench.check("membrane", "FM-1", 10, "10 °C", 0.9, 0.1, {})], [], 0.71)) == 0
}

test_silent[name] if {
	some name, tc in {
		"solvent-borne": {"check": {"keys": ["solvent-borne"]}, "signals": []},
		"warm days": {"check": {"share_below": 0.09}, "signals": []},
		"too cold by day, told elsewhere": {"check": {"share_below": 0.6, "days_usable": 0.4}, "signals": []},
		"heated": {"check": {}, "signals": [bench.signal("heated", "shelter", "heated")]},
	}
	count(_found([object.union(_primer, tc.check)], tc.signals, 0.71)) == 0
}

# A place that begins with its distance stands between commas.
test_words_of_the_place if {
	doc := bench.document([bench.sheet({})], [], [bench.window([_primer], _april(0.71))])
	far := object.union(doc, {"project": {"place": {"text": "18 mi west of Milwaukee"}}})
	some f in freezing_primer.findings with input as far
	contains(f.message, "on 13 Apr 2026, 18 mi west of Milwaukee, 71% of nights")
}

# A primer of which nothing is known but that it is water-borne.
test_no_figure_known if {
	{f.severity | some f in _unstated(bench.p_2, [], 0.8)} == {"note"}
	count(_unstated(bench.p_2, [], 0.79)) == 0
	count(_unstated(object.union(bench.p_2, {"keys": ["solvent-borne"]}), [], 0.95)) == 0
	count(_unstated(object.union(bench.p_2, {"polarity": "no"}), [], 0.95)) == 0
	count(_unstated(bench.p_2, [bench.signal("heated", "shelter", "heated")], 0.95)) == 0
	known := bench.check("primer", "P-2", -7, "-7 °C", 0.01, 1, {"item": bench.p_2.id})
	count(_with(bench.p_2, [known], [], 0.95)) == 0
}

_unstated(item, signals, nights) := _with(item, [], signals, nights)

_with(item, checks, signals, nights) := found if {
	row := bench.sheet({"items": [bench.own, item], "signals": signals})
	doc := bench.document([row], [], [bench.window(checks, _april(nights))])
	found := freezing_primer.findings with input as doc
}

# Fewer nights of frost are asked about where the data wants hours without it, and not where it is silent.
test_few_nights_of_frost[name] if {
	some name, tc in {
		"hours asked": {"said": ["frost_free_hours"], "odds": 0.3, "n": 1},
		"hours asked, seldom frost": {"said": ["frost_free_hours"], "odds": 0.29, "n": 0},
		"nothing asked": {"said": [], "odds": 0.45, "n": 0},
	}
	told := base.product("P-4", {"signals": [base.said(id, "no frost for 12 h") | some id in tc.said]})
	check := object.union(_primer, {"product": "P-4"})
	doc := bench.document([bench.sheet({})], [told], [bench.window([check], _april(tc.odds))])
	found := freezing_primer.findings with input as doc
	count(found) == tc.n
}
