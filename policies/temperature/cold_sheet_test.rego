package temperature.cold_sheet_test

import data.lib.season_bench_test as bench
import data.temperature.cold_sheet

_january := bench.check("membrane", "AB-1", 4.44, "40 F", 0.9, 0.12, {})

_primer := bench.check("primer", "PR-2", 4.44, "40 F", 0.9, 0.12, {"keys": ["water-borne"]})

_found(checks, line) := _of(bench.document([bench.sheet(line)], [], [bench.window(checks, {})]))

_of(doc) := found if {
	found := cold_sheet.findings with input as doc
}

test_whole_finding if {
	_found([_january], {}) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "P12"],
		"message": concat(" ", [
			"AB-1 goes on from 40 °F, but on 19 Jan 2027 in Milwaukee the air is below 40 °F in 90% of working hours;",
			"the low-temperature grade (from 20 °F) would do in 62% of them, the extra-low-temperature grade (from 0 °F)",
			"would suit",
		]),
		"severity": "error",
		"related": [],
		"facts": [" apply_min_c"],
		"keys": {"share_below": 0.9, "limit_c": 4.44},
	}}
}

test_one_finding_names_both if {
	found := _found([_january, _primer], {})
	{f.message | some f in found} == {concat(" ", [
		"AB-1 goes on from 40 °F and primer PR-2 from 40 °F, but on 19 Jan 2027 in Milwaukee the air is below 40 °F in",
		"90% of working hours; the low-temperature grade (from 20 °F) would do in 62% of them, the",
		"extra-low-temperature grade (from 0 °F) would suit",
	])}
	{f.cells | some f in found} == {["C12", "F12", "K12", "P12"]}
}

test_author_writes_celsius if {
	check := object.union(_january, {"limit_c": 4, "limit_text": "4 °C (40 °F)"})
	some f in _found([check], {})
	startswith(f.message, "AB-1 goes on from 4 °C, but")
	endswith(f.message, "(from -17.8 °C) would suit")
}

test_severity[name] if {
	some name, tc in {
		"half the hours": {"check": {"share_below": 0.5, "days_usable": 0.5}, "want": {"error"}},
		"many usable days": {"check": {"share_below": 0.5, "days_usable": 0.51}, "want": {"warning"}},
		"the share that is asked about, exactly": {"check": {"share_below": 0.22, "days_usable": 0.6}, "want": {"warning"}},
		"just under it": {"check": {"share_below": 0.21, "days_usable": 0.6}, "want": set()},
		"a winter grade in its cold hours": {"check": _winter(0.46, 0.6), "want": set()},
		"a winter grade too cold for half": {"check": _winter(0.5, 0.4), "want": {"warning"}},
		"a winter grade in the deep cold": {"check": _winter(0.75, 0.2), "want": {"error"}},
		"the usual figure of a named grade": {"check": {"stated": false, "keys": ["grade-standard"]}, "want": {"warning"}},
		"a winter grade given the usual figure of the standard one": {
			"check": {"stated": false, "keys": ["grade-low-temp"]},
			"want": set(),
		},
		"the usual figure of a winter grade": {
			"check": object.union(_winter(0.8, 0.1), {"stated": false, "keys": ["grade-low-temp"]}),
			"want": {"warning"},
		},
		"the usual figure of no grade": {"check": {"stated": false}, "want": set()},
	}
	{f.severity | some f in _found([object.union(_january, tc.check)], {})} == tc.want
}

_winter(below, usable) := {"limit_c": -6.67, "share_below": below, "days_usable": usable}

test_words[name] if {
	some name, tc in {
		"heated tent": {"signals": [bench.signal("heated", "shelter", "heated tent")], "want": set()},
		"not heated": {"signals": [bench.denial("heated", "shelter", "no heat")], "want": {"error"}},
		"heated, yet unheated": {
			"signals": [bench.signal("heated", "remark", "heated"), bench.signal("unheated", "shelter", "open")],
			"want": {"error"},
		},
		"wall read first": {"signals": [bench.signal("surface_checked", "remark", "read wall first")], "want": {"warning"}},
	}
	{f.severity | some f in _found([_january], {"signals": tc.signals})} == tc.want
}

test_mid_day_and_a_reading_of_a_winter_grade_is_silent if {
	check := object.union(_january, {"limit_c": -6.67, "share_below": 0.6, "days_usable": 0.45})
	signals := [bench.signal("mid_day", "remark", "11 to 3"), bench.signal("surface_checked", "remark", "read wall")]
	count(_found([check], {})) == 1
	count(_found([check], {"signals": signals})) == 0
}

test_mid_day_words if {
	some f in _found([_january], {"signals": [bench.signal("mid_day", "remark", "mid-day")]})
	contains(f.message, "only 12% of days have four hours running at or above 40 °F")
}

test_a_range_read_on_the_day if {
	read := {"reading_air_c": {"min": 4.44, "max": 9, "text": "40 to 48 F", "problem": ""}}
	cold := {"reading_air_c": {"min": 1, "max": 9, "text": "34 to 48 F", "problem": ""}}
	count(_found([_january], {"figures": read})) == 0
	count(_found([_january], {"figures": cold})) == 1
}

test_early_start_is_colder if {
	check := object.union(_january, {"share_below": 0.15, "days_usable": 0.6})
	count(_found([check], {})) == 0
	count(_found([check], {"signals": [bench.signal("morning_work", "remark", "7:30 am")]})) == 1
}

test_project_heat[name] if {
	doc := bench.document([bench.sheet({})], [], [bench.window([_january], {})])
	cold := bench.document(
		[bench.sheet({"signals": [bench.signal("unheated", "shelter", "open")]})],
		[],
		[bench.window([_january], {})],
	)
	some name, tc in {
		"told": {"doc": doc, "words": "in heated tents", "want": 0},
		"denied in the row": {"doc": cold, "words": "in heated tents", "want": 1},
		"heated offices": {"doc": doc, "words": "heated", "want": 1},
	}
	count(_of(bench.with_notes(tc.doc, [], [bench.signal("heated", "", tc.words)]))) == tc.want
}

test_silent[name] if {
	some name, doc in {
		"no window": bench.document([bench.sheet({})], [], []),
		"no check": bench.document([bench.sheet({})], [], [bench.window([], {})]),
		"struck row": bench.document([bench.sheet({"struck": true})], [], [bench.window([_january], {})]),
		"only the primer fails": bench.document([bench.sheet({})], [], [bench.window([_primer], {})]),
		"the upper limit": bench.document([bench.sheet({})], [], [bench.window(
			[object.union(_january, {"bound": "apply_max_c"})],
			{},
		)]),
	}
	count(_of(doc)) == 0
}

test_product_data_is_named if {
	check := object.union(_january, {
		"item": "W!12/1",
		"product": "FM-1",
		"at": {"sheet": "P", "row": 4, "cell": "D4"},
	})
	sheet := bench.sheet({"items": [object.union(bench.own, {"id": "W!12/1"})]})
	doc := bench.document([sheet], [bench.product({"sheet": "P", "row": 4})], [bench.window([check], {})])
	some f in _of(doc)
	f.cells == ["C12", "K12", "P12"]
	f.related == [{"product": "FM-1", "cells": ["D4"], "what": "its data: from 40 °F"}]
}

test_the_mildest_grade_suits if {
	grades := [
		bench.grade("standard", "standard grade", 4.44, "40 F", 0.6, 0.3),
		bench.grade("low-temperature", "low-temperature grade", -6.67, "20 F", 0.1, 0.9),
		bench.grade("extra-low", "extra-low-temperature grade", -17.78, "0 F", 0, 1),
	]
	some f in _of(bench.document([bench.sheet({})], [], [bench.window([_january], {"grades": grades})]))
	endswith(f.message, "in 90% of working hours; the low-temperature grade (from 20 °F) would suit")
}

test_no_grade_suits if {
	arctic := bench.window([_january], {"grades": [bench.grade("standard", "standard grade", 4.44, "40 F", 1, 0)]})
	some f in _of(bench.document([bench.sheet({})], [], [arctic]))
	endswith(f.message, "; no usual grade suits, it takes a heated enclosure")
}

_beside(text, other) := _of(bench.document(
	[
		bench.sheet({"texts": {"substrate": text}, "dates": {"install": {"from": "2027-01-19"}}}),
		object.union(bench.sheet({"dates": {"install": {"from": "2027-01-21"}}}), other),
	],
	[],
	[bench.window([_january], {})],
))

_heated(mark) := {
	"id": "W!40",
	"mark": mark,
	"signals": [{
		"id": "heated",
		"no": false,
		"text": "heated",
		"slot": "remark",
		"at": {"sheet": "W", "row": 40, "cell": "N40"},
	}],
}

test_bed_of_a_heated_row if {
	count(_beside("screed as F-01; block", _heated("F-01"))) == 0
	count(_beside("slab, same as F-01", _heated("F-01"))) == 0
}

test_bed_of_another_row if {
	count(_beside("screed as F-011", _heated("F-01"))) == 1
	count(_beside("screed beside F-01", _heated("F-01"))) == 1
	count(_beside("screed as F-01", {"id": "W!40", "mark": "F-01"})) == 1
}

test_bed_of_a_row_heated_in_another_month if {
	march := object.union(_heated("F-01"), {"dates": {"install": {"from": "2027-03-01"}}})
	count(_beside("screed as F-01", march)) == 1
}

# A range that repeats the product's own is what is allowed, and no reading; another range was read, or forecast.
test_own_range_is_no_reading[name] if {
	some name, tc in {
		"its own range": {"least": 5, "most": 35, "want": 1},
		"another range": {"least": 6, "most": 12, "want": 0},
	}
	figures := {"apply_min_c": bench.figure(5, 5, "5", "C"), "apply_max_c": bench.figure(35, 35, "35", "C")}
	row := bench.sheet({
		"items": [bench.own],
		"figures": {"reading_surface_c": bench.figure(tc.least, tc.most, sprintf("%d-%d", [tc.least, tc.most]), "C")},
	})
	check := object.union(_january, {"limit_c": 5, "limit_text": "5 °C"})
	doc := bench.document([row], [bench.product({"figures": figures})], [bench.window([check], {})])
	found := cold_sheet.findings with input as doc
	count(found) == tc.want
}

# A product whose data has no least, or none as a figure, has no range of its own that a reading could repeat.
test_range_beside_half_a_limit if {
	figures := {"apply_min_c": bench.figure(null, null, "cool", "C"), "apply_max_c": bench.figure(35, 35, "35", "C")}
	row := bench.sheet({
		"items": [bench.own],
		"figures": {"reading_surface_c": bench.figure(5, 35, "5-35", "C")},
	})
	check := object.union(_january, {"limit_c": 5, "limit_text": "5 °C"})
	doc := bench.document([row], [bench.product({"figures": figures})], [bench.window([check], {})])
	count(cold_sheet.findings) == 0 with input as doc
}

# What is brushed or sprayed is not sold in the grades of sheets.
test_fluids_have_no_grades if {
	spray := object.union(_january, {"keys": ["fluid-applied-asphalt-emulsion-air-barrier", "asphaltic"]})
	some f in _of(bench.document([bench.sheet({})], [], [bench.window([spray], {})]))
	not contains(f.message, "grade")
}

# Notes by which the reading of the early morning decides.
test_notes_of_the_coldest_reading[name] if {
	check := object.union(_january, {"share_below": 0.2, "days_usable": 0.9})
	some name, tc in {
		"told": {"no": false, "more": {}, "want": 1},
		"denied": {"no": true, "more": {}, "want": 0},
		"work at mid-day": {"no": false, "more": {"signals": [bench.signal("mid_day", "remark", "11 to 3")]}, "want": 0},
	}
	doc := bench.document([bench.sheet(tc.more)], [], [bench.window([check], {})])
	said := {
		"id": "coldest_counts",
		"no": tc.no,
		"text": "7 am reading counts",
		"slot": "note",
		"at": {"sheet": "N", "row": 2, "cell": "B2"},
	}
	found := cold_sheet.findings with input as object.union(
		doc,
		{"project": object.union(doc.project, {"signals": [said]})},
	)
	count(found) == tc.want
	every one in found { "7 am reading counts" in {r.what | some r in one.related} }
}

_noted(text) := _of(object.union(
	bench.with_notes(
		bench.document([bench.sheet({})], [], [bench.window([_january], {})]),
		[],
		[object.union(bench.signal("heated", "note", "heated tents"), {"at": _note_at})],
	),
	{"project": {"notes": [{"text": text, "at": _note_at}]}},
))

_note_at := {"sheet": "N", "row": 3, "cell": "B3"}

test_heat_that_notes_only_allow if {
	count(_noted("Heated tents are permitted, kept at 10 °C. Keep a log.")) == 1
	count(_noted("Work below the limit in heated tents only.")) == 1
	count(_noted("From 1 November all work is in heated tents. Other shelter may be used before.")) == 0
}

# The notes judge by the usual low of the month, which is that of January here, or of both months of the window.
_by_low(check, signals, more) := _of(object.union(doc, {"project": {
	"signals": [object.union(bench.signal("month_low_counts", "note", "by the mean low"), {"at": _note_at})],
	"place": {"months": [{"mean_min_c": c} | some c in [-8, -1, 3]]},
}})) if {
	doc := bench.document([bench.sheet({"signals": signals})], [], [bench.window([check], more)])
}

test_notes_judge_by_the_low_of_the_month if {
	check := object.union(_january, {"limit_c": -6.67, "limit_text": "20 F", "share_below": 0.3, "days_usable": 0.8})
	some found in _by_low(check, [], {})
	found.severity == "warning"
	endswith(found.message, concat("", [
		"the air is below 20 °F in 30% of working hours, and the usual low of the month is 18 °F; ",
		"the extra-low-temperature grade (from 0 °F) would suit",
	]))
	"by the mean low" in {r.what | some r in found.related}
}

test_low_of_the_month_is_not_below[name] if {
	check := object.union(_january, {"limit_c": -6.67, "limit_text": "20 F", "share_below": 0.3, "days_usable": 0.8})
	some name, tc in {
		"at the limit": {"check": {"limit_c": -8}, "signals": [], "more": {}},
		"into a milder month": {"check": {}, "signals": [], "more": {"to": "2027-02-02"}},
		"no figure of its own": {"check": {"stated": false}, "signals": [], "more": {}},
		"in the warm hours": {"check": {}, "signals": [bench.signal("mid_day", "remark", "noon")], "more": {}},
		"in a tent": {"check": {}, "signals": [bench.signal("heated", "shelter", "heated")], "more": {}},
	}
	count(_by_low(object.union(check, tc.check), tc.signals, tc.more)) == 0
}

test_without_a_note_of_the_low if {
	check := object.union(_january, {"limit_c": -6.67, "limit_text": "20 F", "share_below": 0.3, "days_usable": 0.8})
	count(_of(bench.document([bench.sheet({})], [], [bench.window([check], {})]))) == 0
}

# Under hot metal no winter grade serves: no other grade is named.
test_high_temperature_sheet_has_no_other_grade if {
	hot := bench.check("membrane", "HT-1", 7.22, "45 F", 0.9, 0.12, {"keys": ["asphaltic", "grade-high-temp"]})
	every f in _found([hot], {}) {
		endswith(f.message, "below 45 °F in 90% of working hours")
	}
	count(_found([hot], {})) == 1
}
