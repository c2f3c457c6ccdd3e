package temperature.night_frost_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.night_frost

_night := object.union(bench.figure(-2, -2, "28 F overnight", "°F"), {"at": {"sheet": "W", "row": 12, "cell": "O12"}})

_primer := object.union(bench.p_2, {"product": "P-2"})

_kept := base.product("P-2", {"signals": [base.said("keep_from_freezing", "no frost until dry")]})

_found(more, products) := found if {
	line := bench.sheet(object.union({"items": [bench.fm_1, _primer]}, more))
	found := night_frost.findings with input as bench.document([line], products, [])
}

test_whole_finding if {
	some f in _found({"figures": {"reading_night_c": _night}}, [_kept])
	f.line == "W!12"
	f.severity == "error"
	f.message == "P-2 (water-primer) goes on before a night of frost (28 °F); its data says to keep it from frost"
	f.cells == ["F12", "K12", "O12"]
}

test_by_words_and_without_data if {
	told := [bench.signal("frosty_night", "remark", "hard freeze expected")]
	{f.severity | some f in _found({"signals": told}, [])} == {"warning"}
}

test_a_coating if {
	emulsion := base.item("material", "EM-1", "fluid-applied-acrylic-air-barrier", "membrane", ["acrylic", "water-borne"])
	count(_found({"items": [emulsion], "figures": {"reading_night_c": _night}}, [])) == 1
}

test_at_the_limit[name] if {
	some name, tc in {"at freezing": {"c": 0, "n": 0}, "below": {"c": -0.1, "n": 1}}
	figure := object.union(_night, {"min": tc.c, "max": tc.c})
	count(_found({"figures": {"reading_night_c": figure}}, [])) == tc.n
}

test_silent[name] if {
	dry := base.item("primer", "P-1", "solvent-primer", "primer", ["solvent-borne"])
	some name, more in {
		"heated": {"signals": [bench.signal("heated", "remark", "tent"), bench.signal("unheated", "remark", "heat off")]},
		"heated, and the heat taken off later": {"signals": [
			bench.signal("heated", "remark", "tented"),
			bench.denial("heated", "remark", "heat off on Monday"),
		]},
		"covered the same day": {"signals": [bench.signal("same_day", "remark", "same day")]},
		"solvent-borne": {"items": [bench.fm_1, dry]},
		"no night told": {"figures": {}},
		"a mild night beside the words": {
			"figures": {"reading_night_c": object.union(_night, {"min": 3, "max": 3})},
			"signals": [bench.signal("frosty_night", "remark", "freeze warning")],
		},
		"struck row": {"struck": true},
	}
	row := object.union({"figures": {"reading_night_c": _night}}, more)
	figures := object.get(more, "figures", row.figures)
	count(_found(_with_figures(row, figures), [])) == 0
}

# object.union merges, and a row without a night is to have none.
_with_figures(row, figures) := json.patch(row, [{"op": "replace", "path": "/figures", "value": figures}])
