package exposure.over_usual_test

import data.exposure.over_usual
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_bare(item, days) := {
	"items": [item],
	"spans": {"bare_days": bench.span(days, days, days, "2026-03-01", "2026-06-29")},
}

_found(line, products, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(line)], products, []), limits, [])
	found := over_usual.findings with input as doc
}

test_whole_finding if {
	_found(_bare(bench.fm_1, 120), [], []) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "L12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) stays bare 120 days (1 Mar to 29 Jun 2026), and no limit is given;",
			"a polyethylene face over rubberized asphalt usually may 90 days",
		]),
		"severity": "warning",
		"related": [],
		"source": concat("", [
			"one exposure letter and common practice; no standard test stands behind printed days",
			" (source-read)",
		]),
	}}
}

test_by_face[name] if {
	foil := object.union(bench.fm_1, {"keys": ["asphaltic", "foil-faced"]})
	some name, tc in {
		"on the usual limit": {"item": bench.fm_1, "days": 90, "n": 0},
		"a day over": {"item": bench.fm_1, "days": 91, "n": 1},
		"aluminum face": {"item": foil, "days": 200, "n": 0},
		"permeable": {"item": base.permeable, "days": 181, "n": 1},
		"permeable in time": {"item": base.permeable, "days": 180, "n": 0},
		"no kind known": {"item": base.item("material", "X-1", "", "membrane", []), "days": 400, "n": 0},
		"metal": {"item": base.item("material", "C-1", "copper-sheet", "flashing-metal", ["copper"]), "days": 400, "n": 0},
		"roof sheet": {"item": base.item("material", "R-1", "epdm-membrane", "roofing", ["epdm"]), "days": 400, "n": 0},
	}
	count(_found(_bare(tc.item, tc.days), [], [])) == tc.n
}

test_stated_limits_are_heard_elsewhere if {
	product := bench.product({"figures": {"exposure_days": bench.figure(60, null, "60", "days")}})
	count(_found(_bare(bench.own, 120), [product], [])) == 0
	count(_found(_bare(bench.fm_1, 120), [], [bench.limit("exposure_days", {"max": 30})])) == 0
}

test_said_to_stay_exposed if {
	product := bench.product({"signals": [base.said("may_stay_exposed", "UV stable")]})
	count(_found(_bare(bench.own, 400), [product], [])) == 0
}
