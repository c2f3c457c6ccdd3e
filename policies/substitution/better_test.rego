package substitution.better_test

import data.lib.swap_test
import data.substitution.better

_cold(order) := swap_test.of_figures([swap_test.compared(
	"apply_min_c",
	swap_test.figure(-7, "20 °F", "°F"),
	swap_test.figure(-18, "0 °F", "°F"),
	order,
)])

_found(order) := found if found := better.findings with input as swap_test.document([_cold(order)])

test_colder if {
	some f in _found("lower")
	f.severity == "note"
	f.message == "ZM-1 in place of FM-1: lowest installation temperature 0 °F instead of 20 °F"
}

test_equal_is_silent if count(_found("equal")) == 0

test_worse_is_silent if count(_found("higher")) == 0
