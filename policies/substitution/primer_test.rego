package substitution.primer_test

import data.lib.bench_test
import data.lib.swap_test
import data.substitution.primer

_water := swap_test.offer("PR-1", ["water-primer", "water-borne"], {"class": "primer"})

_solvent := swap_test.offer("PR-2", ["solvent-primer", "solvent-borne"], {"class": "primer"})

_other_water := swap_test.offer("PR-3", ["water-primer", "water-borne"], {"class": "primer"})

# The sheet FM-1 of the row lists the primers.
_found(now, listed) := found if {
	line := bench_test.line("W!12", 12, {"items": [{
		"slot": "material",
		"text": "FM-1",
		"product": "FM-1",
		"polarity": "yes",
	}]})
	sheet := bench_test.product("FM-1", {"accepts": [{"keys": ["cast-concrete"], "except": false, "primers": listed}]})
	document := object.union(
		swap_test.document([swap_test.a_swap(_water, now, {"slot": "primer"})]),
		{"lines": [line], "products": [sheet]},
	)
	found := primer.findings with input as document
}

test_solvent_for_water if {
	some f in _found(_solvent, ["PR-1"])
	f.severity == "warning"
	f.message == "PR-2 is solvent-borne, PR-1 is water-borne, and nothing shows that the sheet takes it"
}

test_listed_is_a_note if {
	some f in _found(_solvent, ["PR-1", "PR-2"])
	f.severity == "note"
}

test_same_carrier_is_silent if count(_found(_other_water, ["PR-1"])) == 0

test_unknown_carrier_is_silent if {
	count(_found(swap_test.offer("PR-9", ["primer-unspecified"], {"class": "primer"}), ["PR-1"])) == 0
}
