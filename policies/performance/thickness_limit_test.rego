package performance.thickness_limit_test

import data.lib.desk_test as desk
import data.performance.thickness_limit

_note := desk.limit("thickness_mm", 1, null, {"keys": ["asphaltic"], "text": "asphaltic sheets 1.0 mm or more"})

_thick(value, text, unit) := {"figures": {"thickness_mm": desk.figure(value, text, unit)}}

_found(lines, product, limits) := found if {
	found := thickness_limit.findings with input as desk.document(lines, [product], limits)
}

_thin := desk.product("R-08", 13, _thick(0.6, "0.6", "mm"))

test_fires_in_full if {
	_found([desk.row(12, "R-08", {}), desk.row(14, "R-08", {})], _thin, [_note]) == {{
		"line": "W!12",
		"cells": ["C12"],
		"message": "R-08 is 0.6 mm thick; the notes ask for 1 mm or more",
		"related": [
			{"product": "R-08", "cells": ["D13"], "what": "its data"},
			{"at": _note.at, "cells": ["A3"], "what": "asphaltic sheets 1.0 mm or more"},
			{"line": "W!14", "cells": ["C14"], "what": "the same sheet"},
		],
	}}
}

test_own_figure if {
	row := desk.row(12, "R-08", _thick(0.762, "30 mil", ""))
	some f in _found([row], desk.product("R-08", 13, {}), [_note])
	f.message == "R-08 is 30 mil thick; the notes ask for 39.4 mil or more"
	f.cells == ["C12", "D12"]
}

test_silent[name] if {
	mils := object.union(_note, {"min": 1.016})
	some name, case in {
		"at the limit": {"mm": 1, "more": {}, "limits": [_note]},
		"printed as 1.0 for 40 mil": {"mm": 1, "more": {}, "limits": [mils]},
		"thicker": {"mm": 1.5, "more": {}, "limits": [_note]},
		"other chemistry": {"mm": 0.6, "more": {}, "limits": [object.union(_note, {"keys": ["butyl"]})]},
		"struck": {"mm": 0.6, "more": {"struck": true}, "limits": [_note]},
		"no limit": {"mm": 0.6, "more": {}, "limits": []},
		"slip of the unit is another topic": {"mm": 0.0254, "more": {}, "limits": [_note]},
		"contradictory cell is another topic": {
			"mm": 0.6,
			"more": {"figures": {"thickness_mm": object.union(desk.figure(0.6, "40 mil (0.6 mm)", ""), {"disagree": true})}},
			"limits": [_note],
		},
	}
	product := desk.product("R-08", 13, _thick(case.mm, "x", "mm"))
	count(_found([desk.row(12, "R-08", case.more)], product, case.limits)) == 0
}

# A limit that asks for a film asks nothing of a sheet, and all the more of what is poured.
test_films_alone if {
	film := desk.limit("thickness_mm", 1.5, null, {"text": "Liquids: 60 mil dry"})
	count(_found([desk.row(12, "R-08", {})], _thin, [film])) == 0
	fluid := object.union(desk.product("R-08", 13, _thick(0.6, "0.6", "mm")), {"family": "liquid-flashing"})
	row := desk.row(12, "R-08", {})
	items := [object.union(item, {"family": "liquid-flashing"}) | some item in row.items]
	count(_found([object.union(row, {"items": items})], fluid, [film])) == 1
}

# A limit that asks for what sticks by itself asks nothing of what is poured; one of both asks it of a film too.
test_sheets_alone[text] if {
	some text, n in {
		"SA membranes 60 mil": 0,
		"Sheets at least 60 mil": 0,
		"peel-and-stick: 1.5 mm": 0,
		"sheets and fluids 60 mil": 1,
		"membranes 60 mil": 1,
	}
	asked := desk.limit("thickness_mm", 1.5, null, {"text": text})
	fluid := object.union(desk.product("R-08", 13, _thick(0.6, "0.6", "mm")), {"family": "liquid-flashing"})
	row := desk.row(12, "R-08", {})
	items := [object.union(item, {"family": "liquid-flashing"}) | some item in row.items]
	count(_found([object.union(row, {"items": items})], fluid, [asked])) == n
}

test_missing if count(_found([desk.row(12, "R-08", {})], desk.product("R-08", 13, {}), [_note])) == 0

# A limit of a place and of all that is there gives way to that of the material by name.
test_by_name_before_by_place if {
	here := desk.limit("thickness_mm", 1.5, null, {"scope": "below grade", "text": "below grade 1.5 mm"})
	sheet := desk.product("R-08", 13, _thick(1.1, "1.1", "mm"))
	row := desk.row(12, "R-08", {"group": "Below grade"})
	count(_found([row], sheet, [_note, here])) == 0
	count(_found([row], sheet, [here])) == 1
}

# What is asked of the sheets of the walls is not asked of tapes, unless they are named.
test_walls_alone[text] if {
	some text, n in {
		"Air/vapor barrier membranes 40 mil": 0,
		"field sheets of 40 mil": 0,
		"wall membranes and strips 40 mil": 1,
		"Membranes 40 mil": 1,
	}
	asked := desk.limit("thickness_mm", 1.016, null, {"text": text})
	row := desk.row(12, "R-08", {})
	items := [object.union(item, {"class": "tape"}) | some item in row.items]
	count(_found([object.union(row, {"items": items})], _thin, [asked])) == n
}

# A note that gives way to the data leaves a product whose data has a thickness to it.
test_note_that_gives_way if {
	asked := object.union(_note, {"text": "Sheets 1 mm or more, unless the legend says less"})
	count(_found([desk.row(12, "R-08", {})], _thin, [asked])) == 0
	count(_found([desk.row(12, "R-08", {})], _thin, [_note])) == 1
}

# So it is of a metal foil with an adhesive, which is a few mils thick.
test_walls_alone_not_foil[text] if {
	some text, n in {
		"Vapour retarder and high-temperature sheets 1 mm": 0,
		"Weather barriers 40 mil": 0,
		"Vapor barriers and flashings 40 mil": 1,
		"Flashings 1 mm": 1,
	}
	asked := desk.limit("thickness_mm", 1.016, null, {"text": text})
	row := desk.row(12, "R-08", {})
	items := [object.union(item, {"class": "flashing-metal"}) | some item in row.items]
	count(_found([object.union(row, {"items": items})], _thin, [asked])) == n
}

# The sheet of a roof has a thickness too.
test_of_a_roof if {
	asked := object.union(_note, {"text": "Roof sheets 1 mm or more"})
	count(_found([desk.row(12, "R-08", {"role": "roofing"})], _thin, [asked])) == 1
	count(_found([desk.row(12, "R-08", {"role": "cladding"})], _thin, [asked])) == 0
}
