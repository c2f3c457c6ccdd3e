package substitution.evidence_test

import data.lib.bench_test
import data.lib.swap_test
import data.substitution.evidence

_air := swap_test.figure(0.003, "0.003", "L/(s·m²)")

# Products of the submittal that tell an air figure, or not.
_found(was, now, figures, told) := found if {
	one := swap_test.a_swap(
		object.union(swap_test.asphaltic, {"texts": was}),
		object.union(swap_test.other_asphaltic, {"texts": now}),
		{"figures": figures},
	)
	document := object.union(swap_test.document([one]), {"products": [bench_test.product("FM-9", {"figures": told})]})
	found := evidence.findings with input as document
}

_missing := [swap_test.compared("air_lsm2", _air, swap_test.blank, "missing")]

test_report_to_follow if {
	some f in _found({"report": "enclosed"}, {"report": "to follow"}, [], {})
	f.severity == "warning"
	f.message == "ZM-1 in place of FM-1: its test report is \"to follow\""
}

test_neighbor_is_told_in_its_own_row if {
	offer := object.union(swap_test.other_asphaltic, {"texts": {"report": "LT grade not yet run"}})
	mine := swap_test.a_swap(swap_test.asphaltic, offer, {})
	beside := swap_test.a_swap(swap_test.asphaltic, offer, {"slot": "touches"})
	found := evidence.findings with input as swap_test.document([mine, beside])
	count(found) == 1
}

test_report_of_both_to_follow_is_silent if {
	count(_found({"report": "to follow"}, {"report": "to follow"}, [], {})) == 0
}

test_other_test if {
	some f in _found({"air_test": "ASTM E2178"}, {"air_test": "ASTM E283"}, [], {})
	f.message == "ZM-1 in place of FM-1: ASTM E283 tests windows, doors and curtain walls"
}

test_figure_missing if {
	some f in _found({}, {}, _missing, {"air_lsm2": _air})
	f.severity == "warning"
	f.message == "ZM-1 in place of FM-1: its data gives no air permeance"
}

# The data of the submittal tells no air figure of any product: that is its form.
test_figure_that_no_product_has_is_silent if count(_found({}, {}, _missing, {})) == 0

test_enclosed_is_silent if count(_found({"report": "enclosed"}, {"report": "attached"}, [], {})) == 0

test_figure_of_a_primer_is_a_note if {
	one := swap_test.a_swap(swap_test.asphaltic, swap_test.other_asphaltic, {"slot": "primer", "figures": _missing})
	document := object.union(
		swap_test.document([one]),
		{"products": [bench_test.product("FM-9", {"figures": {"air_lsm2": _air}})]},
	)
	found := evidence.findings with input as document
	[f.severity | some f in found] == ["note"]
}

_equal := [swap_test.compared("air_lsm2", _air, _air, "equal")]

# What the data of the submittal says of another product.
_beside(was, now, figures, other) := found if {
	one := swap_test.a_swap(
		object.union(swap_test.asphaltic, {"texts": was}),
		object.union(swap_test.other_asphaltic, {"texts": now}),
		{"figures": figures},
	)
	document := object.union(swap_test.document([one]), {"products": [bench_test.product("FM-9", {"texts": other})]})
	found := evidence.findings with input as document
}

test_figure_without_its_test if {
	some f in _beside({"air": "0.003 (ASTM E2178)"}, {"air": "0.003"}, _equal, {"air_test": "E2178"})
	f.severity == "warning"
	f.message == "ZM-1 in place of FM-1: its air permeance comes without the test that it was found by"
}

test_test_told_is_silent if {
	count(_beside({"air_test": "ASTM E2178"}, {"air": "0.003, E2178"}, _equal, {"air_test": "E2178"})) == 0
}

# The submittal names no test anywhere: it may stand in a heading.
test_test_of_no_product_is_silent if count(_beside({"air_test": "ASTM E2178"}, {"air": "0.003"}, _equal, {})) == 0

test_no_figure_is_not_told_twice if {
	found := _beside({"air_test": "ASTM E2178"}, {"air": "-"}, _missing, {"air_test": "E2178"})
	every f in found {
		not contains(f.message, "comes without the test")
	}
}
