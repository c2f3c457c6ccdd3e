package exposure.temporary_roof_test

import data.exposure.temporary_roof
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_ply := base.item("material", "R-4", "modified-bitumen-roofing", "roofing", ["asphaltic"])

_line(days, words, more) := object.union(
	{
		"role": "roofing",
		"items": [_ply],
		"texts": {"remark": words},
		"spans": {"bare_days": bench.span(days, days, days, "2026-08-04", "2026-11-02")},
	},
	more,
)

_found(line, products) := found if {
	found := temporary_roof.findings with input as bench.document([bench.sheet(line)], products, [])
}

test_whole_finding if {
	some f in _found(_line(90, "Underlayment is the temporary roofing till steel is done.", {}), [])
	f.severity == "warning"
	f.message == concat(" ", [
		`R-4 (modified-bitumen-roofing) serves as a temporary roof ("temporary roofing") and stays bare 90 days`,
		"(4 Aug to 2 Nov 2026); a base ply usually may about 30 days",
	])
}

test_words_and_days[name] if {
	some name, tc in {
		"at the limit": {"words": "temp. roof", "days": 30, "n": 0},
		"a day over": {"words": "temp. roof", "days": 31, "n": 1},
		"a night seal": {"words": "left as night seal", "days": 31, "n": 1},
		"taken up first": {"words": "temporary roof removed before the base", "days": 90, "n": 0},
		"no such words": {"words": "base and cap", "days": 90, "n": 0},
	}
	count(_found(_line(tc.days, tc.words, {}), [])) == tc.n
}

test_days_of_the_data_are_held_elsewhere if {
	item := object.union(_ply, {"product": "FM-1"})
	product := bench.product({"figures": {"exposure_days": bench.figure(120, null, "120", "days")}})
	count(_found(_line(90, "temp roof", {"items": [item]}), [product])) == 0
}
