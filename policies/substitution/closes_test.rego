package substitution.closes_test

import data.lib.bench_test
import data.lib.swap_test
import data.substitution.closes

_plain(name) := {"tag": "", "data": false, "name": name}

_wool := swap_test.offer("mineral wool", ["mineral-wool", "inert-fiber"], _plain("Mineral wool"))

_foil := swap_test.offer("foil board", ["polyiso", "foil-faced"], _plain("Polyiso board"))

_found(was, now, traits) := found if {
	line := bench_test.line("W!12", 12, {"items": [{
		"slot": "material",
		"text": "FM-5",
		"product": "",
		"polarity": "yes",
		"keys": traits,
	}]})
	one := swap_test.a_swap(was, now, {"slot": "touches"})
	found := closes.findings with input as object.union(swap_test.document([one]), {"lines": [line]})
}

test_foil_over_a_permeable_sheet if {
	some f in _found(_wool, _foil, ["vapor-permeable"])
	f.message == "foil board in place of mineral wool is vapor-tight and closes the permeable sheet FM-5"
}

test_foil_over_a_tight_sheet_is_silent if count(_found(_wool, _foil, ["asphaltic"])) == 0

test_foil_for_foil_is_silent if count(_found(_foil, _foil, ["vapor-permeable"])) == 0
