package lib.limits_test

import data.lib.limits

_line := {
	"mark": "W-1", "group": "", "place": "Foundation walls below-grade", "role": "membrane", "texts": {},
	"signals": [{"id": "dark_color", "no": false}],
}

_limit := {"kind": "voc_gl", "max": 250, "min": null, "roles": [], "keys": [], "scope": "", "when": []}

_holds(change, keys, role) if {
	limit := object.union(_limit, change)
	found := limits.limits_for("voc_gl", _line, keys, role) with input.project as {"limits": [limit], "signals": []}
	count(found) == 1
}

test_open_limit_holds if _holds({}, ["sbs"], "membrane")

test_null_lists_are_open if _holds({"roles": null, "keys": null, "when": null}, ["sbs"], "membrane")

test_other_kind if not _holds({"kind": "air_lsm2"}, ["sbs"], "membrane")

test_role if {
	_holds({"roles": ["primer", "sealant"]}, [], "primer")
	not _holds({"roles": ["primer"]}, [], "membrane")
}

test_limit_of_its_kind_counts if {
	at := {"sheet": "W", "row": 40, "cell": "A40"}
	primers := object.union(_limit, {"roles": ["primer"], "at": at})
	joints := object.union(primers, {"max": 775, "keys": ["sealant-primer"]})
	elsewhere := object.union(primers, {"max": 300, "at": object.union(at, {"row": 41})})
	project := {"limits": [primers, joints, elsewhere], "signals": []}
	_maxima(project, ["sealant-primer", "solvent-borne"]) == [775, 300]
	_maxima(project, ["water-primer"]) == [250, 300]
}

_maxima(project, keys) := [limit.max |
	some limit in limits.limits_for("voc_gl", _line, keys, "primer") with input.project as project
]

test_keys if {
	_holds({"keys": ["asphaltic"]}, ["sbs", "asphaltic"], "membrane")
	not _holds({"keys": ["asphaltic"]}, ["butyl"], "membrane")
}

test_product if {
	item := {"id": "W!3/1", "slot": "material", "product": "ZB-1", "polarity": "yes", "unknown": false, "keys": []}
	line := object.union(_line, {"id": "W!3", "items": [item]})
	limit := object.union(_limit, {"keys": ["ZB-1"]})
	project := {"limits": [limit], "signals": []}
	count(limits.limits_for("voc_gl", line, [], "")) == 1 with input.project as project
	count(limits.limits_for("voc_gl", _line, [], "")) == 0 with input.project as project
}

test_each_product_of_a_row_has_its_own if {
	sheet := {"id": "W!3/1", "slot": "material", "product": "ZB-1", "polarity": "yes", "unknown": false, "keys": ["sbs"]}
	fluid := object.union(sheet, {"id": "W!3/2", "product": "ZL-2", "keys": ["pmma"]})
	line := object.union(_line, {"id": "W!3", "items": [sheet, fluid]})
	project := {"limits": [object.union(_limit, {"keys": ["ZL-2"]})], "signals": []}
	count(limits.limits_for("voc_gl", line, ["pmma"], "")) == 1 with input.project as project
	count(limits.limits_for("voc_gl", line, ["sbs"], "")) == 0 with input.project as project
}

test_short_forms_of_a_place[place] if {
	some place, n in {
		"TWF at lintels": 1,
		"Thru-wall flashing, level 2": 1,
		"Thruwall at brick": 1,
		"Through the wall": 1,
		"Flashing of walls": 0,
	}
	limit := object.union(_limit, {"scope": "through-wall"})
	found := limits.limits_for("voc_gl", object.union(_line, {"place": place}), [], "flashing") with input.project as {
		"limits": [limit],
		"signals": [],
	}
	count(found) == n
}

test_outside_of_the_insulation[note] if {
	batt := {
		"id": "W!3/2", "slot": "touches", "class": "insulation", "polarity": "yes", "relation": "in_front",
		"side": "object", "at": {"cell": "E3"},
	}
	some note, case in {
		"board outside of it": [{}, 1],
		"behind": [{"relation": "behind"}, 0],
		"of a neighbor": [{"at": {"cell": "G3"}}, 0],
	}
	line := object.union(_line, {"cells": {"substrate": "E3"}, "items": [object.union(batt, case[0])]})
	limit := object.union(_limit, {"scope": "outside of the insulation"})
	project := {"limits": [limit], "signals": []}
	count(limits.limits_for("voc_gl", line, [], "")) == case[1] with input.project as project
}

test_case_is_told_of_the_row[case] if {
	some case in ["indoors", "studs_filled"]
	limit := object.union(_limit, {"when": [case]})
	said := {"id": case, "no": false}
	project := {"limits": [limit], "signals": [said]}
	count(limits.limits_for("voc_gl", _line, [], "")) == 0 with input.project as project
	count(limits.limits_for("voc_gl", object.union(_line, {"signals": [said]}), [], "")) == 1 with input.project as project
}

test_condition if {
	_holds({"when": ["dark_color"]}, [], "")
	not _holds({"when": ["laid_direct"]}, [], "")
}

test_scope[note] if {
	some note, tc in {
		"mark": {"scope": "W-1", "want": true},
		"longer mark": {"scope": "W-10", "want": false},
		"place": {"scope": "below grade", "want": true},
		"number of the word": {"scope": "foundation wall", "want": true},
		"another place": {"scope": "roof", "want": false},
		"one of a list": {"scope": "roofs and walls", "want": true},
		"list of marks": {"scope": "W-2, W-1 & W-3", "want": true},
		"filler words": {"scope": "all the walls", "want": true},
		"nothing but filler": {"scope": "all", "want": false},
		"told by a signal": {"scope": "dark color", "want": true},
	}
	count([s | some s in [tc.scope]; limits.in_scope(s, _line)]) > 0 == tc.want
}

# A note may name the wall type, which stands in a column of its own.
test_wall_type[type] if {
	some type, want in {"W5": true, "W6": false, "w5": true, "pan over W5": false}
	line := {"mark": "7", "group": "", "place": "Field", "signals": [], "items": [], "texts": {"type": type}}
	count([s | some s in ["w5, w7"]; limits.in_scope(s, line)]) > 0 == want
}

test_lies[place] if {
	some place, want in {
		"Balcony north": "flat",
		"Terrace, upturn at door": "upright",
		"Retaining wall": "upright",
		"North side": "upright",
	}
	line := object.union(_line, {"place": place})
	[s | some s in ["flat", "upright"]; limits.in_scope(s, line)] == [want]
}

test_lies_by_group if {
	line := object.union(_line, {"place": "Bay 3", "group": "Podium slab"})
	limits.in_scope("flat", line)
	limits.in_scope("upright", object.union(line, {"texts": {"type": "coat turned up, 2 coats"}}))
}

test_strictest if {
	a := object.union(_limit, {"max": 100, "text": "a"})
	b := object.union(_limit, {"max": 50, "min": 10, "text": "b"})
	limits.lowest_max([a, b, _limit]) == b
	limits.highest_min([a, b]) == b
	not limits.highest_min([a])
	not limits.lowest_max([])
}

test_of_the_rest if {
	at := {"sheet": "N", "row": 3, "cell": "A3"}
	all := object.union(_limit, {"kind": "voc_gl", "max": 100, "at": at, "scope": "", "roles": [], "keys": []})
	own := object.union(all, {"max": 250, "roles": ["primer"]})
	elsewhere := object.union(all, {"max": 80, "at": {"sheet": "N", "row": 9, "cell": "A9"}})
	doc := {"project": {"limits": [all, own, elsewhere]}}
	{l.max | some l in limits.limits_for("voc_gl", _line, [], "primer")} == {250, 80} with input as doc
	{l.max | some l in limits.limits_for("voc_gl", _line, [], "sealant")} == {100, 80} with input as doc
}

_letter := object.union(_limit, {"keys": ["sbs"], "letter": "K-7", "scope": "the ramp"})

_raised(change, line) := limit.max if {
	project := {"limits": [object.union(_letter, change)], "signals": []}
	limit := limits.raised("voc_gl", object.union(_line, line), ["sbs"]) with input.project as project
}

test_letter_asks_nothing if not _holds(_letter, ["sbs"], "membrane")

test_letter_holds[note] if {
	some note, case in {
		"at its place": [{}, {"place": "Ramp, north"}],
		"where it is cited": [{}, {"texts": {"remark": "per letter K-7; tarped"}}],
		"everywhere": [{"scope": ""}, {}],
	}
	_raised(case[0], case[1]) == 250
}

test_letter_does_not_hold[note] if {
	some note, case in {
		"elsewhere": [{}, {}],
		"where another is cited": [{}, {"texts": {"remark": "letter K-71"}}],
		"for another sheet": [{"keys": ["butyl"]}, {"place": "Ramp, north"}],
		"nothing to cite it by": [{"letter": "letter"}, {"texts": {"remark": "see letter"}}],
	}
	not _raised(case[0], case[1])
}

# A limit near something holds in rows that name it, and not in those that are farther from it.
test_near_something[place] if {
	some place, holds in {
		"L2, 2 m from kitchen intake": true,
		"L2, 5 ft from kitchen intake": true,
		"L2 at kitchen intake": true,
		"L2, 12 m from kitchen intake": false,
		"L2, away from kitchen intake": false,
		"L2, kitchen wall": false,
	}
	line := object.union(_line, {"place": place})
	limit := object.union(_limit, {"scope": "within 4 m of intakes"})
	found := limits.limits_for("voc_gl", line, [], "primer") with input.project as {"limits": [limit], "signals": []}
	count(found) == 1 == holds
}

# A letter for one level holds in the rows that are there, by their own column or place.
test_letter_of_a_level if {
	letter := {"kind": "exposure_days", "max": 90, "min": null, "keys": [], "scope": "l12", "letter": "letter"}
	project := {"limits": [letter], "signals": []}
	granted := {ref |
		some ref in ["L12 N/E/W", "L10-L13", "level 12", "L10 S", "L13-L14", "D/612"]
		limits.raised("exposure_days", object.union(_line, {"refs": [ref]}), []) with input.project as project
	}
	granted == {"L12 N/E/W", "L10-L13", "level 12"}
}

test_scope_in_what_was_specified[name] if {
	some name, case in {
		"named there": ["stainless thru-wall flashing", 1],
		"another thing": ["joint sealant", 0],
	}
	row := object.union(_line, {"items": [], "texts": {"specified": case[0], "type": ""}})
	count([1 | limits.in_scope("through-wall", row)]) == case[1]
}

# What a note asks of all that is put on wet holds for a fluid, and for no sheet.
test_asked_of_fluids if {
	fluid := object.union(_limit, {"keys": ["fluid-applied-unspecified"], "roles": []})
	project := {"limits": [fluid], "signals": []}
	held := {family |
		some family in ["fluid-applied-acrylic-air-barrier", "liquid-flashing", "butyl-membrane"]
		limits.limits_for("voc_gl", _line, [family], "membrane")[0] with input.project as project
	}
	held == {"fluid-applied-acrylic-air-barrier", "liquid-flashing"}
}

# A heading over rows that names several things puts them in the wall whose code it begins with.
test_scope_of_a_heading_with_a_code[name] if {
	some name, case in {
		"code first": ["EW-4 PANEL ON STUDS (gables and dormers)", 1],
		"code and dash": ["EW-4 – Panel, north and south", 1],
		"two codes": ["EW-4 and EW-5", 0],
		"no code": ["Panel and EW-4", 0],
		"another code": ["EW-6 Panel, gables and dormers", 0],
	}
	row := object.union(_line, {"items": [], "mark": "a", "place": "", "group": case[0]})
	count([1 | limits.in_scope("ew-4", row)]) == case[1]
}

# A heading that lists the codes of several walls puts its rows in none of them; their own cells do.
test_scope_of_a_heading_with_several_codes[name] if {
	some name, case in {
		"listed": ["Panel on studs (EW-4 / EW-5)", "", "ew-4", 0],
		"listed, and the row's own": ["Panel on studs (EW-4 / EW-5)", "EW-4; north", "ew-4", 1],
		"its other words": ["Panel on studs (EW-4, EW-5)", "", "panel", 1],
		"one code": ["Panel on studs (EW-4)", "", "ew-4", 1],
	}
	row := object.union(_line, {"items": [], "mark": "a", "place": case[1], "group": case[0]})
	count([1 | limits.in_scope(case[2], row)]) == case[3]
}

# What the data calls a through-wall flashing is one, wherever it is; what is not for one is none.
test_scope_in_the_data[words] if {
	some words, n in {
		"thru-wall, drip in a piece of its own": 1,
		"through-wall only": 1,
		"not for thru-wall": 0,
		"sill pans": 0,
	}
	item := {
		"id": "W!3/1", "slot": "material", "product": "MF-1", "family": "stainless-self-adhered-flashing", "name": "MF-1",
		"class": "flashing-metal", "polarity": "yes", "keys": [], "at": {"cell": "C3"},
	}
	row := object.union(_line, {"items": [item], "place": "shelf angle", "texts": {"type": ""}})
	products := [{"id": "MF-1", "texts": {"type": "stainless sheet", "remark": words}, "figures": {}}]
	count([1 | limits.in_scope("through-wall", row)]) == n with input.products as products
}

test_scope_in_the_type[type] if {
	some type, n in {"Through-wall flashing": 1, "Wall flashing": 0}
	item := {"id": "W!3/1", "slot": "material", "product": "", "polarity": "yes", "name": "MF-1"}
	row := object.union(_line, {"items": [item], "place": "shelf angle", "texts": {"type": type}})
	count([1 | limits.in_scope("through-wall", row)]) == n
}

# What its data tells as open as the code means by vapor-permeable is that, whatever it is of.
test_asked_of_what_is_open[name] if {
	some name, case in {
		"at the figure": [286.07, "FL-9", 1],
		"tighter": [280, "FL-9", 0],
		"no data": [600, "FL-8", 0],
	}
	open := object.union(_limit, {"keys": ["vapor-permeable"], "roles": []})
	project := {"limits": [open], "signals": []}
	keys := ["polyether-hybrid"]
	item := {"id": "L/1", "slot": "material", "product": case[1], "polarity": "yes", "keys": keys, "signals": []}
	line := object.union(_line, {"items": [item]})
	product := {"id": "FL-9", "figures": {"vapor_ng": {"min": case[0], "max": case[0]}}}
	held := limits.limits_for("voc_gl", line, keys, "membrane") with input.project as project
		with input.products as [product]
	count(held) == case[2]
}

# Outside of the insulation lies the sheet of a wall whose type has its studs filled, whatever the row says of it.
test_outside_of_filled_studs[name] if {
	some name, case in {
		"filled": ["yes", "batts", 1],
		"none": ["no", "no batts", 0],
		"batts outside": ["yes", "batts on the outside", 0],
	}
	batts := {"slot": "layers", "family": "batt-insulation", "polarity": case[0], "clause": case[1]}
	wall := {
		"id": "T!4", "table": "t2", "mark": "", "group": "", "place": "", "struck": false, "hidden": false, "signals": [],
		"texts": {"type": "W-1", "layers": "panel; sheet; studs"}, "items": [batts],
	}
	line := object.union(_line, {"table": "t1", "group": "W-1", "texts": {}})
	limit := object.union(_limit, {"scope": "outside of the insulation"})
	doc := {"project": {"limits": [limit], "signals": []}, "lines": [wall]}
	count(limits.limits_for("voc_gl", line, [], "")) == case[2] with input as doc
}

# What a note asks of all others is asked of none that it has told of.
test_asked_of_all_others[name] if {
	some name, case in {
		"the wall told of": ["W3", "All other sheets 150 g/L or less", {250}],
		"another wall": ["W4", "All other sheets 150 g/L or less", {150}],
		"elsewhere": ["W3", "Elsewhere 150 g/L", {250}],
		"said of all": ["W3", "All sheets 150 g/L or less", {150, 250}],
	}
	told := object.union(_limit, {"scope": "w3", "max": 250, "at": "A8", "text": "W3: 250 g/L"})
	others := object.union(_limit, {"scope": "", "max": 150, "at": "A8", "text": case[1]})
	project := {"limits": [told, others], "signals": []}
	line := object.union(_line, {"group": case[0]})
	{l.max | some l in limits.limits_for("voc_gl", line, [], "membrane") with input.project as project} == case[2]
}

# What a list says of all tags of a series holds for each of them.
test_scope_by_the_series[words] if {
	some words, n in {"thru-wall flashing": 1, "sill flashing": 0}
	item := {"id": "W!3/1", "slot": "material", "product": "MF-1", "polarity": "yes", "name": "MF-1"}
	row := object.union(_line, {"items": [item], "place": "shelf angle", "texts": {"type": ""}})
	products := [{"id": "MF-1", "texts": {"type": "stainless sheet", "series": words}, "figures": {}}]
	count([1 | limits.in_scope("through-wall", row)]) == n with input.products as products
}

# A line over rows that lists the codes of several walls puts no row in each of them; one code is that of all.
test_section_of_several_walls[section] if {
	some section, want in {
		"PART 2 - FRAMED WALLS (W2, W5)": 0,
		"Framed walls W2 / W5": 0,
		"PART 2 - FRAMED WALLS (W5)": 1,
	}
	row := object.union(_line, {"group": "W2", "texts": {"section": section}})
	count([1 | limits.in_scope("w5", row)]) == want
	limits.in_scope("w2", row)
}

# The letters of a tag may say it.
test_scope_in_the_letters_of_a_tag[tag] if {
	some tag, n in {"TWF-1": 1, "TW-1": 0}
	item := {"id": "W!3/1", "slot": "material", "product": "", "tag": tag, "polarity": "yes", "name": tag}
	row := object.union(_line, {"items": [item], "place": "shelf angle", "texts": {"type": ""}})
	count([1 | limits.in_scope("through-wall", row)]) == n
}

# A note that calls the barrier of the walls by no more than that means its sheet or coat, and no strip, and nothing in
# the ground; a heading over rows of several kinds puts none there.
test_barrier_of_the_walls[name] if {
	some name, case in {
		"sheet": [{}, 1],
		"strip": [{"role": "flashing"}, 0],
		"in the ground": [{"texts": {"section": "Foundation walls"}}, 0],
		"waterproofing": [{"texts": {"type": "sheet waterproofing"}}, 0],
		"one of several in a heading": [{"texts": {"section": "Panels / planters / below grade"}}, 1],
	}
	item := {
		"id": "W!3/1", "slot": "material", "product": "", "class": "membrane", "polarity": "yes", "name": "",
		"keys": ["x"],
	}
	row := object.union(object.union(_line, {"items": [item], "role": "membrane", "place": "", "signals": []}), case[0])
	limit := object.union(_limit, {"scope": "", "keys": ["air-barrier-unspecified"]})
	project := {"limits": [limit], "signals": []}
	count(limits.limits_for("voc_gl", row, ["x"], row.role)) == case[1] with input.project as project
		with input.products as []
}

# Wall sheets are none in the ground and none of a roof; a heading over rows of several kinds puts none of them there.
test_sheets_of_walls_and_ground[name] if {
	some name, case in {
		"wall": [{"place": "North elevation"}, ["wall sheets"]],
		"ground": [{"place": "Basement wall, east"}, ["foundation sheets"]],
		"roof by its place": [{"place": "Roof, vestibule"}, []],
		"roof by its name": [{"items": [_named("torch-on roofing sheet")]}, []],
		"roof by its heading": [{"texts": {"section": "4 ROOFING"}}, []],
		"one heading of several": [{"texts": {"section": "4 Cornices, gables & roofs"}}, ["wall sheets"]],
	}
	row := object.union(object.union(_line, {"place": "", "signals": [], "items": []}), case[0])
	got := [scope | some scope in ["foundation sheets", "wall sheets"]; limits.in_scope(scope, row)]
	got == case[1]
}

test_sheets_of_walls_and_roof[place] if {
	some place, n in {"Roof, vestibule": 1, "North elevation": 1, "Basement wall": 0}
	row := object.union(_line, {"place": place, "signals": [], "items": []})
	count([1 | limits.in_scope("roof, wall sheets", row)]) == n
}

# A flashing on a shelf angle is one through the wall, whatever it is called; a sheet or another place is not.
test_flashing_on_a_shelf_angle[type] if {
	some type, n in {
		"Flashing, relieving angle, floor 4": 1,
		"Shelf-angle flashing": 1,
		"Sheet over shelf angle": 0,
		"Flashing, door head": 0,
	}
	row := object.union(_line, {"items": [_named("x")], "place": "", "texts": {"type": type}})
	count([1 | limits.in_scope("through-wall", row)]) == n
	not limits.in_scope("coping", row)
}

_named(name) := {"id": "W!3/1", "slot": "material", "product": "", "tag": "", "polarity": "yes", "name": name}
