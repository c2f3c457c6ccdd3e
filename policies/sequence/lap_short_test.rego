package sequence.lap_short_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.sequence.lap_short

_lap(mm, text) := {"figures": {"lap_mm": bench.figure(mm, null, text, "mm")}}

_walls := bench.limit("lap_mm", {"min": 50, "text": "Laps 2 in. (50 mm) or more"})

_flashings := bench.limit("lap_mm", {"min": 101.6, "scope": "through-wall", "text": "4 in for through-wall flashings"})

_found(line, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(line)], [], []), limits, [])
	found := lap_short.findings with input as doc
}

_limit(mm) := bench.limit("lap_mm", {"min": mm, "text": "Laps"})

test_whole_finding if {
	line := object.union(_lap(25.4, "1 in (25 mm)"), {"group": "Through-wall flashings"})
	_found(line, [_walls, _flashings]) == {{
		"line": "W!12",
		"cells": ["C12", "N12"],
		"message": "FM-1 (rubberized-asphalt-membrane) laps 1 in (25 mm); the notes ask for 4 in",
		"severity": "error",
		"related": [{"at": _flashings.at, "cells": ["A9"], "what": "4 in for through-wall flashings"}],
	}}
}

_ends := bench.limit("end_lap_mm", {"min": 150, "text": "Sides 75 mm, ends 150 mm"})

_end_lap(mm, text) := {"figures": {
	"lap_mm": bench.figure(75, null, "75", "mm"),
	"end_lap_mm": bench.figure(mm, null, text, "mm"),
}}

test_end_laps if {
	some f in _found(_end_lap(90, "90"), [_walls, _ends])
	f.message == "FM-1 (rubberized-asphalt-membrane) laps 90 mm at its ends; the notes ask for 150 mm"
	f.severity == "error"
	count(_found(_end_lap(150, "150"), [_walls, _ends])) == 0
	count(_found(_end_lap(90, "90"), [_walls])) == 0
	count(_found(_end_lap(40, "40"), [_walls])) == 1
}

test_usual_figure if {
	some f in _found(_lap(30, "30"), [])
	f.message == "FM-1 (rubberized-asphalt-membrane) laps 30 mm; adhered sheet usually laps at least 50 mm"
	f.severity == "warning"
}

test_severity[name] if {
	through := {"place": "thru-wall flashing N"}
	some name, tc in {
		"on the notes' figure": {"line": _lap(50, "50"), "limits": [_walls], "want": set()},
		"2 in for 50 mm and back": {"line": _lap(49.5, "50"), "limits": [_walls], "want": set()},
		"150 mm for 6 in": {"line": _lap(150, "150"), "limits": [_limit(152.4)], "want": set()},
		"75 mm for 3 in": {"line": _lap(75, "75"), "limits": [_limit(76.2)], "want": set()},
		"145 mm for 6 in": {"line": _lap(145, "145"), "limits": [_limit(152.4)], "want": {"error"}},
		"under it": {"line": _lap(45, "45"), "limits": [_walls], "want": {"error"}},
		"the flashings' figure elsewhere": {"line": _lap(75, "75"), "limits": [_walls, _flashings], "want": set()},
		"on the usual figure": {"line": _lap(50, "50"), "limits": [], "want": set()},
		"a flashing of 50 mm": {"line": object.union(_lap(50, "50"), through), "limits": [], "want": {"note"}},
		"a flashing of 75 mm": {"line": object.union(_lap(75, "75"), through), "limits": [], "want": set()},
		"a flashing of 25 mm": {"line": object.union(_lap(25, "25"), through), "limits": [], "want": {"warning"}},
	}
	{f.severity | some f in _found(tc.line, tc.limits)} == tc.want
}

test_silent[name] if {
	metal := base.item("material", "C-1", "copper-sheet", "flashing-metal", ["copper", "metal"])
	some name, line in {
		"no lap": {},
		"zero": _lap(0, "0"),
		"not a figure": {"figures": {"lap_mm": object.union(bench.figure(20, null, "x", ""), {"problem": "no unit"})}},
		"two units that differ": {"figures": {"lap_mm": object.union(bench.figure(20, null, "x", ""), {"disagree": true})}},
		"soldered metal": object.union(_lap(25, "25"), {"items": [metal]}),
		"struck": object.union(_lap(25, "25"), {"struck": true}),
		"a bead": object.union(_lap(10, "10"), {"role": "sealant"}),
	}
	count(_found(line, [])) == 0
}

test_usual_figure_of_a_permeable_sheet[mm] if {
	some mm, n in {38: 1, 50: 0}
	item := object.union(bench.own, {"keys": ["vapor-permeable-self-adhered-membrane", "acrylic-adhesive", "polyolefin"]})
	count(_found(object.union(_lap(mm, "onto each side"), {"items": [item]}), [])) == n
}

# A remark tells another lap than the column; it is told once where both are short.
test_lap_in_a_remark if {
	told := bench.figure(38, null, "38", "mm")
	one := _found({"figures": {"lap_mm": bench.figure(75, null, "75", "mm"), "told_lap_mm": told}}, [_walls])
	{f.message | some f in one} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps 38 mm by the words of the row;",
		"the notes ask for 50 mm",
	])}
	both := _found({"figures": {"lap_mm": bench.figure(30, null, "30", "mm"), "told_lap_mm": told}}, [_walls])
	{f.message | some f in both} == {"FM-1 (rubberized-asphalt-membrane) laps 30 mm; the notes ask for 50 mm"}
	fine := bench.figure(75, null, "75", "mm")
	count(_found({"figures": {"lap_mm": fine, "told_lap_mm": fine}}, [_walls])) == 0
}

# A note that gives way to the product's data asks nothing of a product whose data has the figure; one that does not,
# and one whose product has none, ask it all the same.
test_note_that_gives_way[name] if {
	own := {"figures": {"lap_mm": bench.figure(40, null, "40", "mm"), "end_lap_mm": bench.figure(60, null, "60", "mm")}}
	yields := object.union(_walls, {"text": "Laps 50 mm, except where the maker's data sheet says less"})
	ends := object.union(_ends, {"text": "Ends 150 mm unless the product card says otherwise"})
	works := object.union(_walls, {"text": "50 mm unless the wall is dry"})
	some name, tc in {
		"own figure": {"product": own, "limits": [yields, ends], "n": 0},
		"no own figure": {"product": {}, "limits": [yields, ends], "n": 1},
		"a firm note": {"product": own, "limits": [_walls], "n": 1},
		"one of the works": {"product": own, "limits": [works], "n": 1},
	}
	line := object.union(own, {"items": [bench.own]})
	doc := bench.with_notes(bench.document([bench.sheet(line)], [bench.product(tc.product)], []), tc.limits, [])
	found := lap_short.findings with input as doc
	count(found) == tc.n
}

# The data of a product may ask more of its ends.
test_ends_by_the_data if {
	own := bench.product({"figures": {
		"lap_mm": bench.figure(50, null, "50", "mm"),
		"end_lap_mm": bench.figure(120, null, "120", "mm"),
	}})
	line := object.union(_end_lap(90, "90"), {"items": [bench.own]})
	doc := bench.document([bench.sheet(line)], [own], [])
	found := lap_short.findings with input as doc
	{f.message | some f in found} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps 90 mm at its ends;",
		"its data asks for 120 mm",
	])}
}

# A note on the laps of sheets asks nothing of a fluid, unless it names that too.
test_fluids_under_a_note_on_sheets[text] if {
	some text, n in {
		"Sheets lap 75 mm": 0,
		"Self-adhered membranes lap 75 mm": 0,
		"Sheets and fluids lap 75 mm": 1,
		"Laps": 1,
	}
	limit := bench.limit("lap_mm", {"min": 75, "text": text})
	fluid := base.item("material", "FM-1", "fluid-applied-stpe-air-barrier", "membrane", [])
	line := object.union(_lap(50, "50"), {"items": [object.union(fluid, {"product": "FM-1", "tag": "FM-1"})]})
	count(_found(line, [limit])) == n
}

# A strip that is bedded in beads laps as its own notes say, not as those on sheets do.
test_bedded_strip_under_a_note_on_sheets[text] if {
	some text, n in {
		"Membrane laps 75 mm": 0,
		"Membrane and transition laps 75 mm": 1,
	}
	limit := bench.limit("lap_mm", {"min": 75, "text": text})
	strip := base.item("material", "FM-1", "silicone-transition-strip", "membrane", ["silicone"])
	line := object.union(_lap(50, "50"), {"items": [object.union(strip, {"product": "FM-1", "tag": "FM-1"})]})
	count(_found(line, [limit])) == n
}

# A note on the laps of the waterproofing asks nothing of the sheets of the walls above the ground.
test_walls_under_a_note_on_waterproofing[name] if {
	some name, case in {
		"wall": {"text": "Tanking sheets lap 100 mm", "place": "north wall", "n": 0},
		"short word": {"text": "W/p laps 100 mm", "place": "stair tower", "n": 0},
		"in the ground": {"text": "Tanking sheets lap 100 mm", "place": "basement wall", "n": 1},
		"all": {"text": "Sheets lap 100 mm", "place": "north wall", "n": 1},
		"both": {"text": "Wall sheets and waterproofing lap 100 mm", "place": "north wall", "n": 1},
	}
	limit := bench.limit("lap_mm", {"min": 100, "text": case.text})
	line := object.union(_lap(50, "50"), {"items": [bench.own], "place": case.place})
	count(_found(line, [limit])) == case.n
}

# A bare figure whose heading has the unit is answered in that unit.
test_limit_in_the_unit_of_the_heading if {
	short := {"figures": {"lap_mm": bench.figure(25.4, null, "1 sides / 4 ends", "IN")}}
	note := bench.limit("lap_mm", {"min": 76.2, "text": "3 IN. SIDE, 6 IN. END"})
	[f.message | some f in _found(short, [note])] == [concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps 1 sides / 4 ends;",
		"the notes ask for 3 in",
	])]
	metric := {"figures": {"lap_mm": bench.figure(25, null, "25 set in", "mm")}}
	[f.message | some f in _found(metric, [_walls])] == [concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps 25 set in;",
		"the notes ask for 50 mm",
	])]
}

# What a strip bears on each side of a joint is held to notes on that, and not to those on laps over its like.
test_borne_on_each_side[name] if {
	some name, case in {
		"laps": {"said": "3 in each side", "text": "Flashing laps 4 in", "n": 0},
		"both legs": {"said": "3 in both legs", "text": "End laps of flashing 4 in", "n": 0},
		"a bearing is asked": {"said": "3 in each side", "text": "Transitions lap 4 in onto the wall", "n": 1},
		"each side is asked": {"said": "3 in ea. side", "text": "Lap 4 in each side", "n": 1},
		"a lap is told": {"said": "3 in", "text": "Flashing laps 4 in", "n": 1},
		"bearing": {"said": "3 in brg", "text": "Flashing laps 4 in", "n": 0},
		"bearing is asked": {"said": "3 in bearing", "text": "Strips bear 4 in", "n": 1},
		"less than any sheet": {"said": "1 in each side", "mm": 25.4, "text": "Flashing laps 4 in", "n": 1},
	}
	mm := object.get(case, "mm", 76.2)
	limit := bench.limit("lap_mm", {"min": 101.6, "text": case.text})
	line := object.union(_lap(mm, case.said), {"items": [bench.own]})
	count(_found(line, [limit])) == case.n
}

# What bears on each side of a joint is held to notes on that alone; the least counts of what a note asks on each thing.
test_bearing[name] if {
	all := bench.limit("bearing_mm", {"min": 75, "text": "Transitions bear 75 mm each side"})
	frames := object.union(all, {"min": 25})
	some name, case in {
		"short": {"mm": 40, "limits": [all], "want": {concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) bears 40 mm;",
			"the notes ask for 75 mm",
		])}},
		"on the figure": {"mm": 75, "limits": [all], "want": set()},
		"less on frames": {"mm": 40, "limits": [all, frames], "want": set()},
		"laps are asked": {"mm": 40, "limits": [_walls], "want": set()},
		"nothing asked": {"mm": 40, "limits": [], "want": set()},
	}
	line := {"figures": {"bearing_mm": bench.figure(case.mm, null, sprintf("%d", [case.mm]), "mm")}, "items": [bench.own]}
	{f.message | some f in _found(line, case.limits)} == case.want
}

_metal := object.union(bench.own, {
	"class": "flashing-metal",
	"family": "copper-sheet",
	"keys": ["copper-sheet", "metal"],
})

# Metal that its row calls a through-wall flashing laps as the notes ask of those; trim under such a heading does not.
test_metal_laps[name] if {
	some name, case in {
		"short": {"scope": "through-wall", "place": "thru-wall at the sill", "mm": 50.8, "n": 1},
		"on the figure": {"scope": "through-wall", "place": "thru-wall at the sill", "mm": 101.6, "n": 0},
		"under a heading": {"scope": "through-wall", "place": "drip at the sill", "mm": 50.8, "n": 0},
		"of all sheets": {"scope": "", "place": "thru-wall at the sill", "mm": 50.8, "n": 0},
	}
	limit := bench.limit("end_lap_mm", {"min": 101.6, "scope": case.scope, "text": "Laps 4 in"})
	line := {
		"figures": {"end_lap_mm": bench.figure(case.mm, null, "2 in", "mm")},
		"role": "metal",
		"items": [_metal],
		"place": case.place,
		"texts": {"section": "through-wall flashings"},
	}
	count(_found(line, [limit])) == case.n
}

# The flange of a boot made of roof sheet is no seam of its rolls.
test_fittings if {
	roll := bench.product({"figures": {"lap_mm": bench.figure(75, null, "75", "mm")}})
	count(_of_roofing("FM-1 corner boot", roll)) == 0
	count(_of_roofing("FM-1 field sheet", roll)) == 1
}

_of_roofing(text, product) := found if {
	line := object.union(_lap(50, "50 mm"), {"role": "roofing", "items": [bench.own], "texts": {"material": text}})
	found := lap_short.findings with input as bench.with_notes(
		bench.document([bench.sheet(line)], [product], []),
		[],
		[],
	)
}
