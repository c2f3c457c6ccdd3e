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

_smart := swap_test.offer("smart vapor retarder", ["vapor-retarder-smart"], _plain("Smart vapor retarder"))

_film(keys) := swap_test.offer("10 mil film", keys, _plain("Film"))

test_film_that_stays_tight_for_one_that_opens[name] if {
	some name, case in {
		"polyethylene": {"was": _smart, "now": _film(["polyethylene-sheet"]), "slot": "material", "n": 1},
		"another smart film": {"was": _smart, "now": _film(["vapor-retarder-smart"]), "slot": "material", "n": 0},
		"housewrap": {"was": _smart, "now": _film(["vapor-permeable"]), "slot": "material", "n": 0},
		"film for film": {"was": _film(["epdm"]), "now": _film(["polyethylene-sheet"]), "slot": "material", "n": 0},
		"a neighbor": {"was": _smart, "now": _film(["polyethylene-sheet"]), "slot": "touches", "n": 0},
	}
	line := bench_test.line("W!12", 12, {"items": []})
	one := swap_test.a_swap(case.was, case.now, {"slot": case.slot})
	doc := object.union(swap_test.document([one]), {"lines": [line]})
	count(closes.findings) == case.n with input as doc
}

# What was specified in words stands in the row itself.
test_film_for_one_told_in_words[name] if {
	some name, case in {
		"variable membrane": {"words": "Variable-perm vapor membrane", "keys": ["foil-faced"], "signals": [], "n": 1},
		"plain film": {"words": "10 mil vapor retarder film", "keys": ["polyethylene-film"], "signals": [], "n": 0},
		"a board": {"words": "variable thickness board", "keys": ["foil-faced"], "signals": [], "n": 0},
		"same kind": {"words": "smart vapor retarder", "keys": ["vapor-retarder-smart"], "signals": [], "n": 0},
		"accepted": {
			"words": "smart vapor retarder",
			"keys": ["polyethylene-film"],
			"signals": [{"id": "change_accepted", "no": false, "text": "accepted", "slot": "remark"}],
			"n": 0,
		},
	}
	item := {"slot": "material", "text": "film", "name": "film", "product": "", "polarity": "yes", "keys": case.keys}
	line := bench_test.line("W!12", 12, {
		"items": [item],
		"texts": {"specified": case.words},
		"signals": case.signals,
	})
	doc := object.union(swap_test.document([]), {"lines": [line]})
	count(closes.findings) == case.n with input as doc
}
