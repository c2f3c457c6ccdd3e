package lib.section_test

import data.lib.section
import data.lib.wall_test as wall

_kinds(layers, winter, result) := kinds if {
	doc := wall.document([wall.profile(layers, winter, result)], {})
	kinds := [one.kind | some one in section.judged] with input as doc
}

test_kinds[name] if {
	some name, case in {
		"film and sheet around batts": {
			"layers": [wall.gypsum, wall.film, wall.batt, wall.sheathing, wall.sheet, wall.panel],
			"kinds": ["trap"],
		},
		"sheet outside of batts": {"layers": [wall.gypsum, wall.batt, wall.sheathing, wall.sheet], "kinds": ["cold"]},
		"foil outside, film inside": {
			"layers": [wall.film, wall.batt, wall.sheathing, wall.open_sheet, wall.foil_board],
			"kinds": ["pair"],
		},
		"open sheet outside": {"layers": [wall.film, wall.batt, wall.sheathing, wall.open_sheet], "kinds": []},
		"all insulation outside": {"layers": [wall.gypsum, wall.sheathing, wall.sheet, wall.wool], "kinds": []},
		"wool between sheet and panel": {"layers": [wall.sheet, wall.wool, wall.panel], "kinds": []},
		"sheet and foil board side by side": {"layers": [wall.sheathing, wall.sheet, wall.foil_board], "kinds": []},
		"no insulation": {"layers": [wall.gypsum, wall.sheathing, wall.sheet], "kinds": []},
	}
	_kinds(case.layers, wall.cold, {}) == case.kinds
}

test_enough_insulation_outside[name] if {
	some name, case in {
		"too little": {"share": 0.3, "kinds": ["cold"]},
		"exactly enough": {"share": 0.4, "kinds": []},
		"plenty": {"share": 0.7, "kinds": []},
	}
	layers := [wall.gypsum, wall.batt, wall.sheet, wall.wool]
	needed := {"share": {"out_c": wall.cold, "needed_outside_share": 0.4}}
	_kinds(layers, wall.cold, object.union(wall.shares([0.9, 0.9, case.share, case.share]), needed)) == case.kinds
}

# 2021 IRC table R702.7(3), second-hand: zone 7, 2x4 studs, R-10.
test_the_table_is_enough_for_usual_rooms[name] if {
	some name, case in {
		"R-10": {"r": 10, "usual": true, "zone": "7", "kinds": []},
		"R-9": {"r": 9, "usual": true, "zone": "7", "kinds": ["cold"]},
		"zone 8": {"r": 10, "usual": true, "zone": "8", "kinds": ["cold"]},
		"stated room air": {"r": 10, "usual": false, "zone": "7", "kinds": ["cold"]},
	}
	foam := wall.layer(41, "XPS", "xps", "insulation", 53)
	layers := [wall.gypsum, wall.batt, wall.sheet, foam]
	result := {
		"layers": [{"outside_share": 0.4, "vapor_class": "", "r_m2kw": r} | some r in [0.1, 2.3, 0.1, case.r / 5.678]],
		"share": {"out_c": wall.cold, "needed_outside_share": 0.55},
		"conditions": {"class": {true: "normal", false: ""}[case.usual]},
	}
	doc := wall.document([wall.profile(layers, wall.cold, result)], {})
	note := {"text": concat(" ", ["Climate zone", case.zone]), "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}
	told := object.union(doc, {"project": object.union(doc.project, {"notes": [note]})})
	kinds := [one.kind | some one in section.judged] with input as told
	kinds == case.kinds
}

test_winters[name] if {
	some name, case in {
		"cold": {"winter": -5, "kinds": ["cold"]},
		"at the bound": {"winter": 1, "kinds": ["cold"]},
		"cool": {"winter": 3, "kinds": ["cold"]},
		"mild": {"winter": 9.5, "kinds": []},
		"unknown": {"winter": null, "kinds": []},
	}
	_kinds([wall.batt, wall.sheet], case.winter, {}) == case.kinds
}

test_roofs_are_left_out if {
	roof := object.union(wall.profile([wall.film, wall.batt, wall.sheet], wall.cold, {}), {"mark": "R1 main roof"})
	judged := section.judged with input as wall.document([roof], {})
	judged == []
}

test_no_side_no_fault if {
	layers := [wall.film, wall.batt, wall.sheet]
	known := object.union(wall.profile(layers, wall.cold, {}), {"first": "outside"})
	unknown := object.union(wall.profile(layers, wall.cold, {}), {"first": ""})
	count(section.judged) == 1 with input as wall.document([known], {})
	section.judged == [] with input as wall.document([unknown], {})
}

test_walls_in_the_ground_and_unheated_are_left_out[name] if {
	some name, case in {
		"Foundation wall, below grade": 0,
		"Open link (unheated)": 0,
		"Link, heated": 1,
		"Grade school, east wing": 1,
	}
	wall_of := object.union(wall.profile([wall.film, wall.batt, wall.sheet], wall.cold, {}), {"mark": name})
	judged := section.judged with input as wall.document([wall_of], {})
	count(judged) == case
}

test_strips_are_no_layer[name] if {
	some name, case in {"Membrane strip at the base": 0, "Membrane, striped print": 1}
	doc := wall.document([wall.profile([wall.film, wall.batt, wall.sheet], wall.cold, {})], {})
	lines := [object.union(line, {"texts": texts}) |
		some line in doc.lines
		texts := object.union(line.texts, {"material": {"W!40": name}[line.id]})
	]
	judged := section.judged with input as object.union(doc, {"lines": array.concat(
		[line | some line in doc.lines; line.id != "W!40"],
		lines,
	)})
	count(judged) == case
}

test_tapes_are_no_layer[class] if {
	some class, count_of in {"tape": 0, "membrane": 1}
	doc := wall.document([wall.profile([wall.film, wall.batt, wall.sheet], wall.cold, {})], {})
	lines := [object.union(line, {"items": items}) |
		some line in doc.lines
		items := [object.union(item, {"class": class}) | some item in line.items; line.id == "W!40"]
	]
	judged := section.judged with input as object.union(doc, {"lines": lines})
	count(judged) == count_of
}

# A wall whose profile could not be computed, for want of its place or of a layer, ends nothing.
test_profile_without_result if {
	profile := object.union(wall.profile([wall.film, wall.batt, wall.sheet], wall.cold, {}), {"result": null})
	is_array(section.judged) with input as wall.document([profile], {})
}

# The wool outside of the sheet is what lies outside of the filled studs, and fills none itself.
test_wool_outside_meets_the_table[name] if {
	some name, case in {"R-10": {"r": 10, "kinds": []}, "R-9": {"r": 9, "kinds": ["cold"]}}
	result := {
		"layers": [{"outside_share": 0.4, "vapor_class": "", "r_m2kw": r} | some r in [0.1, 2.3, 0.1, case.r / 5.678]],
		"share": {"out_c": wall.cold, "needed_outside_share": 0.55},
		"conditions": {"class": "normal"},
	}
	doc := wall.document([wall.profile([wall.gypsum, wall.batt, wall.sheet, wall.wool], wall.cold, result)], {})
	note := {"text": "Climate zone 7", "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}
	told := object.union(doc, {"project": object.union(doc.project, {"notes": [note]})})
	kinds := [one.kind | some one in section.judged] with input as told
	kinds == case.kinds
}
