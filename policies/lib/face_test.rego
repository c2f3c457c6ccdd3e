package lib.face_test

import data.lib.bench_test as bench
import data.lib.face

_pour(name, row) := {"name": name, "signals": [], "at": {"sheet": "Pours", "row": row, "cell": ""}}

test_words_of_a_pour_belong_together_by_its_row if {
	told := object.union(bench.said("curing_compound", "wax"), {
		"slot": "substrate",
		"at": {"sheet": "Pours", "row": 10, "cell": "D10"},
	})
	left := object.union(bench.said("left_on", "not cleaned"), {"at": {"sheet": "Pours", "row": 10, "cell": "E10"}})
	line := bench.line("W!12", 12, {"signals": [told, left]})
	found := face.told(line, "curing_compound") with input.pours as []
	[[t.here, t.stays] | some t in found] == [[false, true]]
}

test_pours_of[name] if {
	dated := {"dates": {"placed": {"at": {"sheet": "Pours", "row": 10, "cell": "B10"}}}}
	some name, case in {
		"by the row of its date": {"line": dated, "pours": {"P 9"}},
		"by its name": {"line": {"texts": {"substrate": "upstand (Pour-8)"}}, "pours": {"Pour 8"}},
		"a longer number is another": {"line": {"texts": {"substrate": "upstand, pour 81"}}, "pours": set()},
		"date in the row itself": {"line": {"dates": {"placed": {"at": {"sheet": "W", "row": 10}}}}, "pours": set()},
		"nothing said": {"line": {}, "pours": set()},
	}
	found := face.pours_of(bench.line("W!12", 12, case.line)) with input.pours as [_pour("P 9", 10), _pour("Pour 8", 9)]
	{p.name | some p in found} == case.pours
}
