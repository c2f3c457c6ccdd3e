package temperature.cold_bead_test

import data.lib.season_bench_test as bench
import data.temperature.cold_bead

_bead := bench.check("sealant", "S-2", 4, "4 °C", 0.89, 0.16, {})

_sheet := bench.check("membrane", "FM-1", 4.44, "40 F", 0.9, 0.1, {})

_found(checks, signals) := found if {
	doc := bench.document([bench.sheet({"signals": signals})], [], [bench.window(checks, {})])
	found := cold_bead.findings with input as doc
}

test_whole_finding if {
	_found([_bead], []) == {{
		"line": "W!12",
		"cells": ["H12", "K12", "P12"],
		"message": "S-2 goes on from 4 °C, but on 19 Jan 2027 in Milwaukee the air is below 4 °C in 89% of working hours",
		"severity": "warning",
		"related": [],
		"facts": [" apply_min_c"],
	}}
}

test_usual_figure_is_a_note if {
	{f.severity | some f in _found([object.union(_bead, {"stated": false})], [])} == {"note"}
}

test_at_the_limit if {
	count(_found([object.union(_bead, {"share_below": 0.5})], [])) == 1
	count(_found([object.union(_bead, {"share_below": 0.49})], [])) == 0
}

test_read_on_the_day if {
	read := {"figures": {"reading_air_c": {
		"min": 12, "max": 12, "other": null, "problem": "", "disagree": false, "text": "12", "unit": "°C",
	}}}
	found := cold_bead.findings with input as bench.document([bench.sheet(read)], [], [bench.window([_bead], {})])
	count(found) == 0
}

test_limit_of_the_shop if {
	count(_found([object.union(_bead, {"limit_text": "15 to 30 °C, in the shop"})], [])) == 0
}

test_silent[name] if {
	some name, tc in {
		"told with the sheet": {"checks": [_sheet, _bead], "signals": []},
		"heated": {"checks": [_bead], "signals": [bench.signal("heated", "shelter", "heated")]},
		"a sheet alone": {"checks": [_sheet], "signals": []},
	}
	count(_found(tc.checks, tc.signals)) == 0
}

test_notes_judge_by_the_low_of_the_month[name] if {
	bead := object.union(_bead, {"share_below": 0.3, "days_usable": 0.8})
	some name, tc in {"below": {"low": 1, "want": 1}, "above": {"low": 5, "want": 0}}
	doc := bench.document([bench.sheet({})], [], [bench.window([bead], {})])
	found := cold_bead.findings with input as object.union(doc, {"project": object.union(doc.project, {
		"signals": [bench.signal("month_low_counts", "note", "by the mean low")],
		"place": {"text": "Milwaukee", "problem": "", "months": [{"mean_min_c": tc.low}]},
	})})
	count(found) == tc.want
}
