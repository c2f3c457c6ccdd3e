package performance.insulation_less_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.performance.insulation_less

# R-12 is 2.11 m²·K/W (NIST SP 811).
_asked := desk.limit("insulation_m2kw", 2.113, null, {"scope": "ew-3", "text": "EW-3: insulation R-12 min"})

_wool(clause) := object.union(bench.item("touches", "wool", "mineral-wool", "insulation", []), {
	"clause": clause,
	"at": {"sheet": "W", "row": 12, "cell": "G12"},
})

_found(items, more) := found if {
	all := array.concat([desk.own(12, "FL-2")], items)
	row := desk.row(12, "FL-2", object.union({"group": "EW-3", "items": all}, more))
	found := insulation_less.findings with input as desk.document([row], [], [_asked])
}

test_fires_in_full if {
	_found([_wool("2 in. wool R-8.4")], {}) == {{
		"line": "W!12",
		"cells": ["G12"],
		"message": "Wool has R-8.4; R-12 is asked for there",
		"related": [{"at": _asked.at, "cells": ["A3"], "what": `"EW-3: insulation R-12 min"`}],
	}}
}

test_in_metric if {
	{f.message | some f in _found([_wool("50 mm wool, RSI 1.4")], {})} == {"Wool has RSI 1.4; RSI 2.11 is asked for there"}
}

test_silent[name] if {
	some name, case in {
		"just as much": {"items": [_wool("3 in. wool R-12")], "more": {}},
		"within rounding": {"items": [_wool("3 in. wool R-11.8")], "more": {}},
		"another wall": {"items": [_wool("2 in. wool R-8.4")], "more": {"group": "EW-4"}},
		"no resistance told": {"items": [_wool("2 in. wool")], "more": {}},
		"by the inch": {"items": [_wool("wool R-4.2 per inch")], "more": {}},
		"two layers": {"items": [_wool("2 layers wool R-6")], "more": {}},
		"batts": {"items": [_wool("R-8 wool batts")], "more": {}},
		"two insulations": {"items": [_wool("1 in. wool R-4"), _wool("2 in. wool R-8.4")], "more": {}},
		"left out": {"items": [object.union(_wool("wool R-4"), {"polarity": "no"})], "more": {}},
		"struck": {"items": [_wool("2 in. wool R-8.4")], "more": {"struck": true}},
		"was and is": {"items": [_wool("wool R-8.4 now R-12")], "more": {}},
	}
	count(_found(case.items, case.more)) == 0
}

_cavity(text) := desk.limit("insulation_m2kw", 2.113, null, {"scope": "cavity", "text": text})

# A cavity is that of a masonry veneer, and not the one between the studs that the codes call so.
test_cavity[name] if {
	some name, tc in {
		"behind brick": {"asked": "Cavity insulation R-12 or more", "place": "Cavity, north", "beside": "brick", "want": 1},
		"not in the cavity": {"asked": "Cavity insulation R-12 or more", "place": "Parapet", "beside": "brick", "want": 0},
		"no masonry": {"asked": "Cavity insulation R-12 or more", "place": "Cavity", "beside": "panels", "want": 0},
		"studs": {"asked": "R-12 cavity + R-5 ci or more", "place": "Cavity, north", "beside": "brick", "want": 0},
	}
	row := desk.row(12, "FL-2", {
		"place": tc.place,
		"texts": {"touches": sprintf("2 in. wool R-8.4, %s", [tc.beside])},
		"items": [desk.own(12, "FL-2"), _wool("2 in. wool R-8.4")],
	})
	found := insulation_less.findings with input as desk.document([row], [], [_cavity(tc.asked)])
	count(found) == tc.want
}
