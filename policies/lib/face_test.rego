package lib.face_test

import data.lib.bench_test as bench
import data.lib.face

_pour(name, row) := {"name": name, "signals": [], "at": {"sheet": "Pours", "row": row, "cell": ""}}

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
