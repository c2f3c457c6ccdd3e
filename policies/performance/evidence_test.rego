package performance.evidence_test

import data.lib.desk_test as desk
import data.performance.evidence

_limit := desk.limit("air_lsm2", null, 0.02, {"text": "0.02 by E2178, report with the submittal"})

_other := desk.product("AB-1", 4, {"figures": {"air_lsm2": desk.figure(0.001, "0.001", "")}})

_found(more, row, limits) := found if {
	doc := desk.document([desk.row(12, "AB-6", row)], [_other, desk.product("AB-6", 9, more)], limits)
	found := evidence.findings with input as doc
}

_pending := {"texts": {"air_test": "report to follow"}, "figures": {"air_lsm2": desk.figure(0.001, "0.001", "")}}

test_fires_in_full if {
	_found({}, {}, [_limit]) == {{
		"product": "AB-6",
		"cells": ["H9", "I9"],
		"message": "nothing shows that AB-6 keeps the project's limit on air permeance: its data gives no figure",
		"related": [
			{"line": "W!12", "cells": ["C12"], "what": "uses AB-6"},
			{"at": _limit.at, "cells": ["A3"], "what": "0.02 by E2178, report with the submittal"},
		],
	}}
}

test_report_to_follow if {
	some f in _found(_pending, {}, [_limit])
	endswith(f.message, `its test report is "report to follow"`)
}

# A report that is promised is asked for of a strip too.
test_report_of_a_strip_to_follow if {
	count(_found(object.union(_pending, {"role": "transition"}), {}, [_limit])) == 1
}

test_silent[name] if {
	some name, case in {
		"no limit": {"more": {}, "row": {}, "limits": []},
		"figure": {"more": {"figures": {"air_lsm2": desk.figure(0.001, "0.001", "")}}, "row": {}, "limits": [_limit]},
		"unused": {"more": {}, "row": {"struck": true}, "limits": [_limit]},
		"metal": {"more": {"keys": ["metal"]}, "row": {}, "limits": [_limit]},
		"deck": {"more": {"family": "hot-rubberized-asphalt-waterproofing"}, "row": {}, "limits": [_limit]},
		"flashing": {"more": {"role": "flashing"}, "row": {}, "limits": [_limit]},
		"strip": {"more": {"role": "transition"}, "row": {}, "limits": [_limit]},
		"under metal": {"more": {"keys": ["asphaltic", "grade-high-temp"]}, "row": {}, "limits": [_limit]},
		"sealant": {"more": {"role": "sealant"}, "row": {}, "limits": [_limit]},
		"wind layer": {
			"more": {},
			"row": {"signals": [desk.said(12, "not_air_barrier", "remark")]},
			"limits": [_limit],
		},
	}
	count(_found(case.more, case.row, case.limits)) == 0
}

# What the data leaves empty does not apply, where it says so.
test_empty_cells[text] if {
	some text, want in {
		"Empty cell = not applicable": 0,
		"Blanks mean n/a": 0,
		"Blank: ask the maker": 1,
		"Fill no cell that is not applicable": 1,
	}
	doc := desk.document([desk.row(12, "AB-6", {})], [_other, desk.product("AB-6", 9, {})], [_limit])
	told := object.union(doc, {"project": object.union(doc.project, {"notes": [{"text": text}]})})
	found := evidence.findings with input as told
	count(found) == want
}

test_data_without_any_air_figure if {
	doc := desk.document([desk.row(12, "AB-6", {})], [desk.product("AB-6", 9, {})], [_limit])
	count(evidence.findings) == 0 with input as doc
}

# A sheet that only goes on below grade is waterproofing, whatever family it is of.
test_silent_below_grade if {
	sheet := desk.product("AB-6", 9, {"texts": {"type": "self-adhered SBS sheet waterproofing"}})
	doc := desk.document([desk.row(12, "AB-6", {})], [_other, sheet], [_limit])
	count(evidence.findings) == 0 with input as doc
	wall := desk.product("AB-6", 9, {"texts": {"type": "self-adhered SBS sheet, walls"}})
	told := desk.document([desk.row(12, "AB-6", {})], [_other, wall], [_limit])
	count(evidence.findings) == 1 with input as told
}
