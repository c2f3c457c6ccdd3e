package sequence.end_dam_test

import data.lib.season_bench_test as bench
import data.sequence.end_dam

_found(line) := found if {
	found := end_dam.findings with input as bench.document([bench.sheet(line)], [], [])
}

_none := bench.denial("end_dam", "remark", "no end dams")

test_whole_finding if {
	_found({"signals": [_none]}) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": `FM-1 (rubberized-asphalt-membrane) ends without end dams ("no end dams")`,
	}}
}

test_a_course_of_film if {
	count(_found({"signals": [_none], "role": "film"})) == 1
}

test_the_cell_of_its_height_says_none if {
	{f.message | some f in _found({"texts": {"end_dam": "nil - runs out at corner"}})} == {concat("", [
		"FM-1 (rubberized-asphalt-membrane) ends without end dams ",
		"(the cell says \"nil - runs out at corner\")",
	])}
}

test_a_pan_that_is_open if {
	open := bench.signal("ends_open", "remark", "ends left open")
	{f.message | some f in _found({"signals": [open], "texts": {"type": "Sill pan, PVC"}})} == {concat("", [
		"FM-1 (rubberized-asphalt-membrane) has ends that are open (\"ends left open\")",
	])}
}

# Only the data of the tag tells that it is a flashing in the wall.
test_a_tag_that_is_a_flashing[name] if {
	some name, case in {
		"thru-wall flashing, 304": 1,
		"cavity tray": 1,
		"sheet for walls": 0,
	}
	open := bench.signal("ends_open", "remark", "cut flush at both jambs")
	row := bench.sheet({"signals": [open], "items": [object.union(bench.fm_1, {"product": "FM-1"})]})
	told := {"id": "FM-1", "texts": {"type": name}}
	found := end_dam.findings with input as bench.document([row], [told], [])
	count(found) == case
}

test_metal_at_a_threshold_that_is_open if {
	open := bench.signal("ends_open", "lap", "open at both ends")
	count(_found({"signals": [open], "texts": {"type": "Threshold, door 4"}, "role": "metal"})) == 1
	count(_found({"signals": [open], "texts": {"type": "Threshold, door 4"}, "role": "membrane"})) == 0
	count(_found({"signals": [open], "texts": {"type": "Strap, behind sill angle"}, "role": "metal"})) == 0
}

test_open_and_no_pan[name] if {
	open := bench.signal("ends_open", "remark", "open ends")
	some name, line in {
		"a weep tube": {"signals": [open], "texts": {"type": "weep tube"}},
		"dams are told": {"signals": [open, bench.signal("end_dam", "remark", "end dams")], "texts": {"type": "tray"}},
		"denied": {"signals": [object.union(open, {"no": true})], "texts": {"type": "tray"}},
	}
	count(_found(line)) == 0
}

test_silent[name] if {
	some name, line in {
		"there are some": {"signals": [bench.signal("end_dam", "remark", "end dams 2 in")]},
		"a height": {"texts": {"end_dam": "25"}},
		"does not apply": {"texts": {"end_dam": "n/a"}},
		"a stroke": {"texts": {"end_dam": "-"}},
		"answered yes": {"texts": {"end_dam": "Y"}},
		"nothing said": {},
		"ends that close in another way": {"signals": [_none, bench.denial("ends_open", "remark", "into a closed corner")]},
		"struck": {"signals": [_none], "struck": true},
		"no sheet": {"signals": [_none], "role": "sealant"},
	}
	count(_found(line)) == 0
}

# A column that asks for end dams is answered with a letter.
test_answered_no[word] if {
	some word in ["N", "n", "no", "N, stops at the post"]
	count(_found({"texts": {"end_dam": word}})) == 1
}

# What was specified tells what the metal offered for it is.
test_open_where_a_flashing_was_specified[name] if {
	open := bench.signal("ends_open", "remark", "stops flat")
	some name, case in {
		"through the wall": ["through-wall flashing, copper", 1],
		"a weep": ["weep vent, full height", 0],
	}
	count(_found({"signals": [open], "texts": {"specified": case[0]}})) == case[1]
}

# A flashing at the base of a cavity or on a shelf angle is a through-wall flashing.
test_open_at_a_base[place] if {
	some place, told in {"Flashing on shelf angle, wing B": 1, "Base flashing, bay 4": 1, "Field above the base": 0}
	open := bench.signal("ends_open", "lap", "nothing folded up")
	count(_found({"signals": [open], "texts": {"place": place}, "role": "flashing"})) == told
}

# By its short form too.
test_open_at_a_through_wall_flashing_by_letters[place] if {
	some place, told in {"TWF over louvers": 1, "Twill facing over louvers": 0}
	open := bench.signal("ends_open", "lap", "stops flat")
	count(_found({"signals": [open], "texts": {"place": place}, "role": "metal"})) == told
}

# A sheet with a metal face on the angle that carries the brick is the flashing there; one of asphalt may be a strip.
test_metal_faced_on_an_angle[name] if {
	some name, case in {
		"copper": {"place": "Relieving angle, level 4", "key": "copper", "found": 1},
		"asphalt": {"place": "Relieving angle, level 4", "key": "asphaltic", "found": 0},
		"elsewhere": {"place": "Column face", "key": "copper", "found": 0},
	}
	own := object.union(bench.fm_1, {"text": "TW", "keys": [case.key]})
	line := {"texts": {"type": "", "place": case.place}, "role": "flashing", "items": [own]}
	open := bench.signal("ends_open", "edge", "cut flush at both jambs")
	count(_found(object.union(line, {"signals": [open]}))) == case.found
}
