package temperature.service_dark_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.service_dark

_note := bench.limit("service_c", {"min": 85, "when": ["dark_color", "laid_direct"], "text": "85 °C under black metal"})

_serves(c, text) := bench.product({"figures": {"service_max_c": bench.figure(c, null, text, "°C")}})

_coping := {
	"items": [bench.own],
	"texts": {"touches": "matt black steel coping, laid tight"},
	"signals": [
		bench.signal("dark_color", "touches", "matt black"),
		bench.signal("laid_direct", "touches", "laid tight"),
	],
}

_found(line, product, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(line)], [product], []), limits, [])
	found := service_dark.findings with input as doc
}

test_whole_finding if {
	_found(_coping, _serves(70, "70"), [_note]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"message": concat(" ", [
			`FM-1 (rubberized-asphalt-membrane) lies under "matt black steel coping, laid tight" and serves to 70 °C; the`,
			"notes ask for 85 °C",
		]),
		"severity": "error",
		"related": [
			{"at": _note.at, "cells": ["A9"], "what": "85 °C under black metal"},
			{"product": "FM-1", "cells": ["F4"], "what": "its service temperature"},
		],
	}}
}

test_usual_figure_in_the_authors_unit if {
	product := bench.product({"figures": {"service_max_c": bench.figure(71.1, null, "160 F", "")}})
	some f in _found(_coping, product, [])
	f.severity == "warning"
	endswith(f.message, "serves to 160 °F; dark metal laid direct usually asks for 185 °F")
}

test_no_data if {
	some f in _found(_coping, bench.product({}), [_note])
	f.severity == "warning"
	contains(f.message, "no service temperature is given for it; the notes ask for 85 °C")
}

test_at_the_limit[name] if {
	some name, tc in {"at it": {"c": 85, "n": 0}, "rounded": {"c": 84.5, "n": 0}, "below": {"c": 84, "n": 1}}
	count(_found(_coping, _serves(tc.c, "x"), [_note])) == tc.n
}

test_metal_runs_over_the_figure[name] if {
	some name, tc in {
		"at it": {"c": 71.1, "text": "black metal reaches well over 160 F in July", "n": 1},
		"above it": {"c": 82, "text": "black metal reaches well over 160 F in July", "n": 0},
		"asked for at least": {"c": 71.1, "text": "160 F or more over black metal", "n": 0},
	}
	note := bench.limit("service_c", {"min": 71.1, "when": ["dark_color"], "text": tc.text})
	found := _found(_coping, _serves(tc.c, "x"), [note])
	count(found) == tc.n
	every f in found { endswith(f.message, "by the notes it gets hotter than 160 °F there") }
}

test_dark_by_its_own_data if {
	cap := object.union(base.own(base.aluminum), {"text": "A-1 coping", "product": "A-1"})
	named := object.union(cap, {"polarity": "yes", "clause": "A-1 coping above, laid tight"})
	line := {"items": [bench.own, named], "signals": [bench.signal("laid_direct", "touches", "laid tight")]}
	black := base.product("A-1", {"signals": [base.said("dark_color", "black anodized")]})
	doc := bench.with_notes(bench.document([bench.sheet(line)], [_serves(70, "70"), black], []), [_note], [])
	some f in service_dark.findings with input as doc
	f.severity == "error"
	f.cells == ["C12", "G12"]
	contains(f.message, `under "A-1 coping above, laid tight" and serves to 70 °C`)
}

# The row names the metal by its tag alone; its data says what it is, and of what color.
test_metal_known_by_its_tag[name] if {
	named := object.union(base.own(base.aluminum), {"text": "A-1", "product": "A-1", "polarity": "yes", "clause": "A-1"})
	asked := bench.limit("service_c", {"min": 100, "text": "good for 100 °C under metal"})
	some name, tc in {
		"a coping": {"type": "Coping, sheet zinc", "signals": [], "want": 1},
		"a light one": {"type": "Coping, white", "signals": [base.said("light_color", "white")], "want": 0},
		"no cover": {"type": "Angle, sheet zinc", "signals": [], "want": 0},
	}
	cap := base.product("A-1", {"texts": {"type": tc.type}, "signals": tc.signals})
	row := bench.sheet({"items": [bench.own, named]})
	doc := bench.with_notes(bench.document([row], [_serves(70, "70"), cap], []), [asked], [])
	found := service_dark.findings with input as doc
	count(found) == tc.want
}

test_words[name] if {
	some name, tc in {
		"insulation between": {"more": [bench.signal("insulated_over", "touches", "wool between")], "want": 0},
		"vented": {"more": [bench.signal("vented", "touches", "on battens")], "want": 0},
		"not vented": {"more": [bench.denial("vented", "touches", "no vent gap")], "want": 1},
		"not dark": {"more": [bench.denial("dark_color", "touches", "not black")], "want": 0},
	}
	line := object.union(_coping, {"signals": array.concat(_coping.signals, tc.more)})
	count(_found(line, _serves(70, "70"), [_note])) == tc.want
}

test_silent[name] if {
	brick := {
		"items": [bench.own],
		"texts": {"place": "dark brick band"},
		"signals": [bench.signal("dark_color", "place", "dark"), bench.signal("laid_direct", "remark", "tight on")],
	}
	panel := {
		"items": [bench.own, base.item("touches", "wool", "mineral-wool", "insulation", [])],
		"texts": {"touches": "4 in. wool, then black metal panel"},
		"signals": [bench.signal("dark_color", "touches", "black")],
	}
	light := object.union(_coping, {"texts": {"touches": "light grey coping"}, "signals": [_light]})
	some name, line in {
		"dark brick": brick,
		"wool in the row": panel,
		"light metal": light,
		"nothing dark": {"items": [bench.own], "texts": {"touches": "coping, laid tight"}},
		"struck row": object.union(_coping, {"struck": true}),
		"a note that asks for more than the row says": {
			"items": [bench.own],
			"texts": {"remark": "black metal panel beyond"},
			"signals": [bench.signal("dark_color", "remark", "black")],
		},
	}
	count(_found(line, _serves(70, "70"), [_note])) == 0
}

_light := bench.signal("light_color", "touches", "light grey")

test_no_limit_and_hot_sheets_are_silent if {
	no_limit := object.union(bench.figure(null, null, "no limit", ""), {"no_limit": true})
	free := bench.product({"figures": {"service_max_c": no_limit}})
	count(_found(_coping, free, [_note])) == 0
	hot := object.union(bench.own, {"keys": ["asphaltic", "grade-high-temp"], "product": ""})
	count(_found(object.union(_coping, {"items": [hot]}), bench.product({}), [])) == 0
}

# A coping lies on the sheet under it, and its data alone say that it is dark: the notes' figure for metal laid direct
# counts. A trim is metal too; a dark panel that is not said to lie on the sheet is none of the note's.
test_covers_of_the_notes_figure[name] if {
	named := object.union(base.own(base.aluminum), {"text": "A-1", "product": "A-1", "polarity": "yes", "clause": "A-1"})
	trim := {
		"items": [bench.own],
		"texts": {"place": "door frame, dark brown trim tight to sheet"},
		"signals": [bench.signal("dark_color", "place", "dark brown"), bench.signal("laid_direct", "place", "tight to")],
	}
	some name, tc in {
		"a coping": {"type": "Coping, sheet zinc, graphite", "line": {"items": [bench.own, named]}, "want": {"error"}},
		"a panel": {"type": "Wall panel, graphite", "line": {"items": [bench.own, named]}, "want": set()},
		"a trim in the row": {"type": "", "line": trim, "want": {"error"}},
	}
	metal := base.product("A-1", {"texts": {"type": tc.type}, "signals": [base.said("dark_color", "graphite")]})
	doc := bench.with_notes(bench.document([bench.sheet(tc.line)], [_serves(70, "70"), metal], []), [_note], [])
	{f.severity | some f in service_dark.findings with input as doc} == tc.want
}

# The row says itself what its sheet serves to.
test_told_by_the_row if {
	told := object.union(bench.figure(82.2, null, "180 F", ""), {"at": {"sheet": "W", "row": 12, "cell": "P12"}})
	found := _found(object.union(_coping, {"figures": {"service_max_c": told}}), bench.product({}), [])
	some f in found
	f.cells == ["C12", "G12", "P12"]
	endswith(f.message, "serves to 180 °F; dark metal laid direct usually asks for 185 °F")
}

_cap_sheet := object.union(_coping, {"texts": {"touches": "dark brown cap sheet, laid direct"}})

test_dark_membrane if {
	some f in _found(_cap_sheet, _serves(65, "65"), [])
	f.severity == "warning"
	endswith(f.message, "serves to 65 °C; a dark membrane laid direct usually asks for 85 °C")
}

# Base plies under cap sheets rarely have a figure.
test_membrane_without_a_figure if count(_found(_cap_sheet, bench.product({}), [])) == 0

# A wall's cap of metal lies on the sheet as a coping does; a coping of stone is no metal.
test_caps_and_stone if {
	found := {cover |
		some cover in ["brown zinc cap on cleats", "limestone coping", "precast concrete coping"]
		line := {"items": [bench.own], "texts": {"touches": cover}, "signals": []}
		count(_found(line, _serves(70, "70"), [bench.limit("service_c", {"min": 85, "when": []})])) > 0
	}
	found == {"brown zinc cap on cleats"}
}

# A place that is named by the dark metal over it says so in the column of groups; a wall that is clad with dark
# panels does not.
test_group_under_metal[name] if {
	some name, tc in {
		"under": {"text": "Roof edge, below black zinc coping", "n": 1},
		"clad": {"text": "Wall of dark metal panels, coping level", "n": 0},
		"light": {"text": "Roof edge under white coping", "n": 0},
	}
	line := {
		"items": [bench.own],
		"group": tc.text,
		"texts": {"group": tc.text},
		"signals": [bench.signal("dark_color", "group", "black") | name != "light"],
	}
	count(_found(line, _serves(70, "70"), [_note])) == tc.n
}

# Notes may ask for a figure behind metal panels of any color, which lie on no sheet.
test_behind_panels[name] if {
	asks := "Sheet behind metal panels: 80 °C or more"
	some name, tc in {
		"panels": {"touches": "metal wall panels on Z-girts", "note": asks, "c": 70, "want": 1},
		"by their color": {"touches": "charcoal cassettes", "note": "80 °C behind metal cladding", "c": 70, "want": 1},
		"it serves": {"touches": "metal wall panels", "note": asks, "c": 82, "want": 0},
		"a note on copings": {"touches": "metal wall panels", "note": "80 °C under copings", "c": 70, "want": 0},
		"no metal": {"touches": "fiber cement panels", "note": asks, "c": 70, "want": 0},
		"no note": {"touches": "metal wall panels", "note": "", "c": 70, "want": 0},
	}
	asked := [bench.limit("service_c", {"min": 80, "text": tc.note}) | tc.note != ""]
	line := {"items": [bench.own], "texts": {"touches": tc.touches}, "signals": []}
	count(_found(line, _serves(tc.c, "x"), asked)) == tc.want
}

test_panels_with_wool_before_them if {
	asked := [bench.limit("service_c", {"min": 80, "text": "Sheet behind metal panels: 80 °C or more"})]
	wool := base.item("touches", "wool", "mineral-wool", "insulation", [])
	line := {"items": [bench.own, wool], "texts": {"touches": "75 wool, metal panels"}, "signals": []}
	count(_found(line, _serves(70, "x"), asked)) == 0
}

# The description of the sheet may say that dark metal comes over it; one that is dark itself, or that no dark metal
# may cover, does not.
test_dark_metal_in_the_description[text] if {
	some text, n in {
		"Sheet up the curb and over it. Black metal cap over.": 1,
		"Underlay beneath the dark green coping": 1,
		"Charcoal sheet under the coping": 0,
		"Sheet beside the dark bronze coping": 0,
		"Wall sheet. Never black copings over.": 0,
	}
	line := {
		"items": [bench.own],
		"texts": {"material": text},
		"signals": [bench.signal("dark_color", "material", "dark")],
	}
	count(_found(line, _serves(70, "70"), [_note])) == n
}

# The wall's insulation ends beside the coping on the top of the parapet; told in one cell with it, it lies between.
test_insulation_of_the_wall_beside_a_top[name] if {
	some name, tc in {
		"beside the top": {"bed": "plywood, top of the parapet", "cell": "H12", "want": 1},
		"the wall's top": {"bed": "wall top", "cell": "H12", "want": 1},
		"told with the coping": {"bed": "plywood, top of the parapet", "cell": "K12", "want": 0},
		"on the wall": {"bed": "plywood", "cell": "H12", "want": 0},
	}
	wool := object.union(base.item("touches", "wool", "mineral-wool", "insulation", []), {"at": {"cell": tc.cell}})
	steel := base.item("touches", "matt black steel coping", "steel", "flashing-metal", [])
	cap := object.union(steel, {"at": {"cell": "K12"}})
	line := {
		"items": [bench.own, wool, cap],
		"texts": {"touches": "75 wool; matt black steel coping", "substrate": tc.bed},
		"signals": [bench.signal("dark_color", "touches", "matt black")],
	}
	count(_found(line, _serves(70, "70"), [])) == tc.want
}
