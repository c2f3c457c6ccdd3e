package performance.air_row_test

import data.lib.desk_test as desk
import data.performance.air_row

_air(value, text) := {"figures": {"air_lsm2": desk.figure(value, text, "L/(s·m²)")}}

_found(more, product) := found if {
	found := air_row.findings with input as desk.document([desk.row(12, "AB-4", more)], [product], [])
}

_plain := desk.product("AB-4", 7, {})

test_fires_in_full if {
	_found(_air(0.035, "0,035"), _plain) == {{
		"line": "W!12",
		"cells": ["C12", "N12"],
		"severity": "warning",
		"message": concat("", [
			"AB-4 is scheduled with an air permeance of 0,035 L/(s·m²), but the usual limit for an air barrier material ",
			"is 0.02 L/(s·m²) (0.004 cfm/ft²) at 75 Pa",
		]),
	}}
}

test_named_air_barrier_is_an_error if {
	said := object.union(_air(0.035, "0.035"), {"signals": [desk.said(12, "air_barrier_here", "remark")]})
	desk.levels(_found(said, _plain)) == {"error"}
}

test_silent[name] if {
	some name, case in {
		"at the limit": {"more": _air(0.02, "0.02"), "product": _plain},
		"under": {"more": _air(0.006, "0.006"), "product": _plain},
		"missing": {"more": {}, "product": _plain},
		"wind layer": {
			"more": object.union(_air(0.035, "0.035"), {"signals": [desk.said(12, "not_air_barrier", "remark")]}),
			"product": _plain,
		},
		"told at the product": {"more": _air(0.035, "0.035"), "product": desk.product("AB-4", 7, _air(0.035, "0.035"))},
		"insulation": {"more": object.union(_air(9, "9"), {"role": "insulation"}), "product": _plain},
	}
	count(_found(case.more, case.product)) == 0
}
