package temperature.cold_primer_test

import data.lib.season_bench_test as bench
import data.temperature.cold_primer

_primer := bench.check("primer", "P-2", 4.44, "40 °F (4 °C)", 0.63, 0.47, {"keys": ["water-primer", "water-borne"]})

_sheet := bench.check("membrane", "FM-2", -6.67, "20 F", 0.1, 0.9, {})

_found(checks, signals, more) := found if {
	doc := bench.document([bench.sheet({"signals": signals})], [], [bench.window(checks, more)])
	found := cold_primer.findings with input as doc
}

test_whole_finding if {
	_found([_sheet, _primer], [], {}) == {{
		"line": "W!12",
		"cells": ["F12", "K12", "P12"],
		"message": concat(" ", [
			"Primer P-2 goes on from 40 °F, but on 19 Jan 2027 in Milwaukee the air is below 40 °F in 63% of working",
			"hours, and 92% of nights freeze it (FM-2 itself goes on from 20 °F)",
		]),
		"severity": "error",
		"related": [],
		"facts": [" apply_min_c"],
		"keys": {"share_below": 0.63, "limit_c": 4.44},
	}}
}

test_fires[name] if {
	some name, tc in {
		"alone in the row": {"checks": [_primer], "signals": [], "want": {"error"}},
		"usual figure": {"checks": [object.union(_primer, {"stated": false})], "signals": [], "want": {"warning"}},
		"said to be mid-day": {
			"checks": [_primer],
			"signals": [bench.signal("mid_day", "remark", "mid-day")],
			"want": {"error"},
		},
		"early in shade": {
			"checks": [object.union(_primer, {"share_below": 0.42})],
			"signals": [bench.signal("morning_work", "remark", "7:30 am"), bench.signal("shaded", "remark", "shaded")],
			"want": {"error"},
		},
	}
	{f.severity | some f in _found(tc.checks, tc.signals, {})} == tc.want
}

test_silent[name] if {
	cold_sheet := object.union(_sheet, {"limit_c": 4.44, "share_below": 0.9, "days_usable": 0.1})
	some name, tc in {
		"told with the sheet": {"checks": [cold_sheet, _primer], "signals": []},
		"heated": {"checks": [_primer], "signals": [bench.signal("heated", "shelter", "tent, heated")]},
		"a solvent-borne primer for the cold": {
			"checks": [object.union(_primer, {"limit_c": -12, "share_below": 0.2, "keys": ["solvent-borne"]})],
			"signals": [],
		},
		"just warm enough": {"checks": [object.union(_primer, {"share_below": 0.219})], "signals": []},
		"no primer": {"checks": [_sheet], "signals": []},
	}
	count(_found(tc.checks, tc.signals, {})) == 0
}

test_no_frost_words_for_solvent if {
	some f in _found([object.union(_primer, {"keys": ["solvent-borne"]})], [], {})
	not contains(f.message, "freeze")
}
