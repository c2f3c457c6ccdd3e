package vapor.inside_warm_test

import data.lib.bench_test as bench
import data.lib.wall_test as wall
import data.vapor.inside_warm

_found(layers, winter) := found if {
	found := inside_warm.findings with input as wall.document([wall.profile(layers, winter, {})], {})
}

test_fires_in_full if {
	_found([wall.gypsum, wall.film, wall.batt, wall.open_sheet], 12.3) == {{
		"line": "W!36",
		"cells": ["C36", "L36"],
		"message": "VR-1 lies on the room side of the insulation, where winters are mild (12.3 °C)",
	}}
}

test_silent[name] if {
	smart := object.union(wall.film, {"vapor_ng": 45})
	some name, case in {
		"cold": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": wall.cold},
		"just too cool": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": 6.4},
		"place unknown": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": null},
		"class II": {"layers": [smart, wall.batt, wall.open_sheet], "winter": 12},
		"no insulation outside of it": {"layers": [wall.batt, wall.film], "winter": 12},
		"two barriers are told elsewhere": {"layers": [wall.film, wall.batt, wall.sheet], "winter": 12},
	}
	count(_found(case.layers, case.winter)) == 0
}

_cold(row, film) := found if {
	item := object.union(bench.item("material", "poly", "polyethylene-sheet", "membrane", []), {"vapor_ng": film})
	usual := {"group": "W9", "items": [item], "texts": {"substrate": "room side of PIR"}}
	line := bench.line("W!12", 12, object.union(usual, row))
	wall := bench.line("T!4", 4, {
		"sheet": "T",
		"table": "t2",
		"mark": "W9",
		"texts": {"layers": "panel; block; PIR; liner", "remark": "walk-in cooler, 2 C"},
	})
	found := inside_warm.findings with input as object.union(bench.document([], []), {"lines": [line, wall]})
}

test_cold_room_in_full if {
	{[f.message, f.severity] | some f in _cold({}, 4)} == {[
		concat("", [
			"poly lies on the room side (\"room side of PIR\") of a room that is kept cold (\"walk-in cooler, 2 C\"), ",
			"into which vapor drives all year",
		]),
		"error",
	]}
}

test_cold_room_told_by_the_place if {
	count(_cold({"group": "", "texts": {"place": "Cold store, S", "remark": "behind the liner panels"}}, 4)) == 1
}

test_cold_room_silent[name] if {
	some name, case in {
		"warm side": {"row": {"texts": {"substrate": "outer face of block, warm side"}}, "film": 4},
		"open film": {"row": {}, "film": 800},
		"another wall": {"row": {"group": "W8"}, "film": 4},
		"side not told": {"row": {"texts": {"substrate": "PIR"}}, "film": 4},
		"room beside it": {
			"row": {"group": "", "texts": {"place": "Office next to the freezer", "substrate": "room side of studs"}},
			"film": 4,
		},
	}
	count(_cold(case.row, case.film)) == 0
}

_row(sheet, touches, winter) := found if {
	kinds := {
		"studs": ["steel-stud-framing", "metal"], "glass wool": ["glass-fiber-insulation", "insulation"],
		"poly": ["polyethylene-sheet", "film"], "slip sheet of poly": ["polyethylene-sheet", "film"],
	}
	near := [object.union(bench.item("touches", text, kind[0], kind[1], []), {"clause": text}) |
		some text in touches
		kind := kinds[text]
	]
	main := object.union(bench.item("material", "LM-1", sheet.family, "membrane", []), {"vapor_ng": sheet.vapor_ng})
	line := bench.line("W!12", 12, {
		"role": "membrane",
		"items": array.concat([main], near),
		"texts": {"touches": concat(", ", touches)},
	})
	found := inside_warm.findings with input as object.union(
		wall.document([wall.profile([wall.gypsum], winter, {})], {}),
		{"lines": [line]},
	)
}

_open := {"family": "fluid-applied-acrylic-air-barrier", "vapor_ng": 700}

_tight := {"family": "rubberized-asphalt-membrane", "vapor_ng": 3}

test_row_tells_the_film_itself if {
	{f.message | some f in _row(_open, ["glass wool", "poly"], 12.3)} == {
		"poly lies on the room side of the insulation, where winters are mild (12.3 °C)",
	}
}

test_row_silent[name] if {
	some name, case in {
		"cold winters": {"sheet": _open, "touches": ["glass wool", "poly"], "winter": wall.cold},
		"a tight sheet outside is told elsewhere": {"sheet": _tight, "touches": ["glass wool", "poly"], "winter": 12},
		"a slip sheet": {"sheet": _open, "touches": ["glass wool", "slip sheet of poly"], "winter": 12},
		"no insulation in studs": {"sheet": _open, "touches": ["poly"], "winter": 12},
	}
	count(_row(case.sheet, case.touches, case.winter)) == 0
}

# Where the list of walls has the film outside of the insulation, "inner face" is that of the wall behind it.
test_cold_room_drawn_outside[name] if {
	poly := object.union(wall.film, {"family": "polyethylene-sheet"})
	some name, case in {
		"outside": {"layers": [wall.panel, wall.batt, poly, wall.sheathing], "n": 0},
		"room side": {"layers": [wall.panel, poly, wall.batt, wall.sheathing], "n": 1},
		"both sides": {"layers": [poly, wall.batt, poly, wall.sheathing], "n": 1},
		"not drawn": {"layers": [wall.panel, wall.batt, wall.sheathing], "n": 1},
		"another wall": {"layers": [wall.panel, wall.batt, poly], "name": "W8", "n": 1},
	}
	one := {"id": "W9", "name": object.get(case, "name", "W9"), "lines": [], "layers": case.layers}
	found := _cold({"texts": {"substrate": "inner face of block"}}, 4) with data.lib.section.all as [one]
	count(found) == case.n
}
