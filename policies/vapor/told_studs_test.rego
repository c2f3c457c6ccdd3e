package vapor.told_studs_test

import data.lib.bench_test as base
import data.lib.desk_test as desk
import data.vapor.told_studs

_winter(low, high) := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": low, "mean_max_c": high}

_batts := object.union(base.item("remark", "batts", "insulation-unspecified", "insulation", []), {"polarity": "yes"})

_found(remark, ng, window) := found if {
	product := desk.product("R-02", 7, {"figures": {"vapor_ng": desk.figure(ng, "x", "ng")}})
	row := desk.row(18, "R-02", {"role": "membrane", "texts": {"remark": remark}})
	more := object.union(row, {"items": array.concat(row.items, [_batts])})
	doc := object.union(desk.document([more], [product], []), {"windows": [window]})
	found := told_studs.findings with input as doc
}

_told := "No exterior insulation at the stair, batts only"

test_fires_in_full if {
	_found(_told, 1.7, _winter(-14, -2)) == {{
		"line": "W!18",
		"cells": ["C18", "L18", "M18"],
		"severity": "error",
		"message": concat("", [
			"R-02 lies outside of all the insulation, which is in the studs; with -8 °C in the three coldest months ",
			"room moisture condenses on it",
		]),
		"related": [],
	}}
}

test_class_two if desk.levels(_found(_told, 40, _winter(-14, -2))) == {"warning"}

test_outside_taken_away if {
	every told in ["exterior wool deleted by addendum", "C.I. omitted at this bay", "cont. insul. taken out"] {
		count(_found(told, 1.7, _winter(-14, -2))) == 1
	}
}

test_all_in_the_studs if {
	every told in [
		"All of the insulation lies in the studs",
		"insulation only between studs",
		"all insulation is batts in studs",
		"None outboard; batts in studs only",
		"no space for foam outside here, batts in the bays",
	] {
		count(_found(told, 1.7, _winter(-14, -2))) == 1
	}
}

test_silent[name] if {
	some name, case in {
		"nothing is said of the outside": ["batts in the studs", 1.7, _winter(-14, -2)],
		"insulation outside": ["batts; 75 mm board outside", 1.7, _winter(-14, -2)],
		"the board came back": ["exterior board reinstated, deleted note void", 1.7, _winter(-14, -2)],
		"a vapor-open sheet": [_told, 1500, _winter(-14, -2)],
		"mild winter": [_told, 1.7, _winter(8, 16)],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
