package performance.air_product_test

import data.lib.desk_test as desk
import data.performance.air_product

_note := desk.limit("air_lsm2", null, 0.02032, {"text": "0.004 cfm/ft2 max. by E2178"})

_found(value, text, more, limits) := found if {
	product := desk.product("AB-4", 7, {"figures": {"air_lsm2": desk.figure(value, text, "cfm/ft²")}})
	doc := desk.document([desk.row(12, "AB-4", more)], [product], limits)
	found := air_product.findings with input as doc
}

test_fires_in_full if {
	_found(0.2032, "0.04", {}, [_note]) == {{
		"product": "AB-4",
		"cells": ["H7"],
		"severity": "error",
		"message": concat("", [
			"AB-4 has an air permeance of 0.04 cfm/ft², but the project allows 0.02 L/(s·m²) (0.004 cfm/ft²) at 75 Pa; ",
			"0.2 L/(s·m²) (0.04 cfm/ft²) is the limit of an assembly by ASTM E2357, ",
			"not of a material",
		]),
		"related": [
			{"line": "W!12", "cells": ["C12"], "what": "uses AB-4"},
			{"at": _note.at, "cells": ["A3"], "what": "0.004 cfm/ft2 max. by E2178"},
		],
	}}
}

test_digits_of_the_other_unit if {
	some f in _found(0.1016, "0.02", {}, [])
	endswith(f.message, "; 0.02 is the limit in L/(s·m²), not in cfm/ft²")
	f.severity == "warning"
}

test_said_to_be_the_air_barrier if {
	said := {"signals": [desk.said(12, "air_barrier_here", "remark")]}
	desk.levels(_found(0.035, "0.035", said, [])) == {"error"}
}

test_silent[name] if {
	some name, case in {
		"under": {"value": 0.001, "more": {}, "limits": [_note]},
		"at the limit": {"value": 0.02032, "more": {}, "limits": [_note]},
		"between the two printed limits": {
			"value": 0.02032,
			"more": {},
			"limits": [desk.limit("air_lsm2", null, 0.02, {})],
		},
		"wind layer": {
			"value": 0.2032,
			"more": {"signals": [desk.said(12, "not_air_barrier", "remark")]},
			"limits": [_note],
		},
		"struck": {"value": 0.2032, "more": {"struck": true}, "limits": [_note]},
	}
	count(_found(case.value, "0.04", case.more, case.limits)) == 0
}

test_no_sheet_no_figure[name] if {
	some name, more in {
		"cladding": {"role": "cladding", "figures": {"air_lsm2": desk.figure(5, "5", "")}},
		"insulation": {"role": "insulation", "figures": {"air_lsm2": desk.figure(5, "5", "")}},
		"no figure": {},
		"metal": {"keys": ["metal"], "figures": {"air_lsm2": desk.figure(5, "5", "")}},
	}
	doc := desk.document([desk.row(12, "AB-4", {})], [desk.product("AB-4", 7, more)], [_note])
	count(air_product.findings) == 0 with input as doc
}

test_unused_product if {
	product := desk.product("AB-4", 7, {"figures": {"air_lsm2": desk.figure(1, "1", "")}})
	count(air_product.findings) == 0 with input as desk.document([desk.row(12, "AB-1", {})], [product], [_note])
}
