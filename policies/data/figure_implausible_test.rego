package data.figure_implausible_test

import data.data.figure_implausible
import data.lib.desk_test as desk

_found(kind, figure, more) := found if {
	row := object.union(desk.row(28, "R-1", {"figures": {kind: figure}}), more)
	found := figure_implausible.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("thickness_mm", desk.figure(40, "40", "mm"), {}) == {{
		"line": "W!28",
		"cells": ["D28"],
		"severity": "error",
		"message": concat("", [
			"thickness 40 mm is not to be believed of a membrane; ",
			"it looks as if mil was written in a column of mm (1.02 mm)",
		]),
	}}
}

# No film that dries is an inch thick; a heavy one of hot rubber is 6 mm.
test_film if {
	desk.levels(_found("film_mm", desk.figure(30, "30", "mm"), {})) == {"error"}
	count(_found("film_mm", desk.figure(6, "6", "mm"), {})) == 0
	count(_found("film_mm", desk.figure(0.8, "0.8", "mm"), {})) == 0
}

test_mm_among_mils if {
	some f in _found("thickness_mm", desk.figure(0.0254, "1.0", "mil"), {})
	endswith(f.message, "it looks as if mm was written in a column of mil (1 mm)")
}

test_unexplained_is_asked_about if {
	desk.levels(_found("thickness_mm", desk.figure(300, "300", "mm"), {})) == {"warning"}
	desk.levels(_found("apply_min_c", desk.figure(200, "200", "°C"), {})) == {"warning"}
	desk.levels(_found("lap_mm", desk.figure(0.5, "0.5 mm gap", "mm"), {})) == {"note"}
}

test_of_no_known_kind_it_may_be_thick if {
	unknown := {"items": [object.union(desk.own(28, "R-1"), {"family": "", "keys": []})]}
	count(_found("thickness_mm", desk.figure(40, "40", "mm"), unknown)) == 0
}

test_nothing_laps if {
	count(_found("lap_mm", desk.figure(0, "0", "mm"), {"role": "sealant"})) == 0
	count(_found("lap_mm", desk.figure(0, "0", "mm"), {"role": "other"})) == 0
	count(_found("lap_mm", desk.figure(0, "0", "mm"), {"role": "membrane"})) == 1
}

test_product if {
	product := desk.product("R-1", 5, {"figures": {"air_lsm2": desk.figure(50.8, "10", "cfm/ft²")}})
	found := figure_implausible.findings with input as desk.document([], [product], [])
	{[f.cells, f.message] | some f in found} == {[
		["H5"],
		"R-1: air permeance 10 cfm/ft² is not to be believed of a membrane",
	]}
}

# A smart retarder is a film, though it is kept among the membranes.
test_thin_film if {
	thin := {"figures": {"thickness_mm": desk.figure(0.06, "60", "µm")}, "role": "membrane"}
	smart := desk.product("R-1", 5, object.union(thin, {"family": "vapor-retarder-smart"}))
	sheet := desk.product("R-2", 6, object.union(thin, {"family": "butyl-membrane"}))
	found := figure_implausible.findings with input as desk.document([], [smart, sheet], [])
	{f.product | some f in found} == {"R-2"}
}

test_row_of_a_thin_film if {
	film := object.union(desk.own(5, "R-1"), {"family": "vapor-retarder-smart"})
	row := desk.row(5, "R-1", {
		"figures": {"thickness_mm": desk.figure(0.05, "2", "mil")},
		"role": "membrane",
		"items": [film],
	})
	found := figure_implausible.findings with input as desk.document([row], [], [])
	count(found) == 0
}

_below(heading) := found if {
	figure := object.union(desk.figure(40, "40", "mm"), {"assumed": true})
	row := desk.row(28, "R-1", {"figures": {"thickness_mm": figure}, "role": "flashing"})
	doc := object.union(desk.document([row], [], []), {"reading": {"tables": [{
		"id": row.table,
		"columns": [{"slot": "thickness", "heading": heading}],
	}]}})
	found := figure_implausible.findings with input as doc
}

test_strip_below_a_heading_of_thickness if {
	count(_below("Thk, mm")) == 1
	count(_below("SHEET_THICKNESS_MM")) == 1
	count(_below("mm")) == 0
}

test_silent[name] if {
	some name, case in {
		"usual": {"kind": "thickness_mm", "figure": desk.figure(1, "1,0", "mm"), "more": {}},
		"at the edge": {"kind": "thickness_mm", "figure": desk.figure(8, "8", "mm"), "more": {}},
		"board": {"kind": "thickness_mm", "figure": desk.figure(150, "150", "mm"), "more": {"role": "insulation"}},
		"struck": {"kind": "thickness_mm", "figure": desk.figure(40, "40", "mm"), "more": {"struck": true}},
		"two units that disagree": {
			"kind": "thickness_mm",
			"figure": object.union(desk.figure(40, "40 mm (40 mil)", "mm"), {"disagree": true}),
			"more": {},
		},
		"winter primer": {"kind": "apply_min_c", "figure": desk.figure(-18, "-18", "°C"), "more": {}},
	}
	count(_found(case.kind, case.figure, case.more)) == 0
}

test_width_of_a_strip[name] if {
	some name, case in {
		"a tape told by its width": {"own": 0.3, "fires": 0},
		"its own thickness in mil": {"own": 1.5, "fires": 1},
	}
	figure := object.union(desk.figure(60, "60", "mm"), {"assumed": true})
	row := desk.row(28, "R-1", {"role": "flashing", "figures": {"thickness_mm": figure}, "items": [desk.own(28, "R-1")]})
	told := desk.product("R-1", 5, {"figures": {"thickness_mm": desk.figure(case.own, "own", "mm")}})
	found := figure_implausible.findings with input as desk.document([row], [told], [])
	count(found) == case.fires
}

# What is made for daylight may stay in it for years; a sheet of a wall may not.
test_years_in_the_sun[role] if {
	some role, count_of in {"sealant": 0, "gasket": 0, "transition": 0, "roofing": 0, "membrane": 1, "tape": 1}
	years := {"figures": {"exposure_days": desk.figure(3650, "3650", "days")}, "role": role}
	product := desk.product("R-1", 5, years)
	found := figure_implausible.findings with input as desk.document([], [product], [])
	count(found) == count_of
}
