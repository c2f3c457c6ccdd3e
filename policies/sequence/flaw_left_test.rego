package sequence.flaw_left_test

import data.lib.desk_test as desk
import data.sequence.flaw_left

_told := {
	"id": "flaw_left",
	"no": false,
	"text": "ripped at the anchor",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := flaw_left.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: ripped at the anchor, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) has a flaw that the row does not say was mended",
			"(\"ripped at the anchor\")",
		]),
	}}
}

test_put_right[text] if {
	some text in ["ripped at the anchor, patched 6 in. round", "ripped at the anchor; replaced"]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("ripped at the anchor, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
	}
	count(_found("ripped at the anchor", more)) == 0
}

_by_hand(family, class) := found if {
	said := object.union(_told, {"id": "not_rolled", "text": "rubbed on by hand"})
	item := object.union(desk.own(12, "FM-1"), {"family": family, "name": family, "class": class})
	found := _found("rubbed on by hand", {"signals": [said], "items": [item]})
}

test_not_rolled if {
	{f.message | some f in _by_hand("butyl-tape", "tape")} == {
		"FM-1 (butyl-tape) is not rolled, as the row tells (\"rubbed on by hand\")",
	}
}

test_not_rolled_and_right[family] if {
	some family, class in {"fluid-applied-acrylic-air-barrier": "membrane", "xps": "insulation"}
	count(_by_hand(family, class)) == 0
}

# Work on the flaw, a coat or piece over it, or one who says that it may stay.
test_put_right_in_other_words[text] if {
	some text in [
		"ripped at the anchor, plugged and dressed with mastic", "ripped at the anchor; back-brushed",
		"ripped at the anchor, a 2nd coat over all", "ripped at the anchor, all re-sprayed",
		"ripped at the anchor; new length on", "ripped at the anchor, 3 mm, within the tolerance",
		"ripped at the anchor, accepted by the inspector", "ripped at the anchor, trowelled over",
		"ripped at the anchor, snipped and stippled", "ripped at the anchor, OK'd by the maker's man",
	]
	count(_found(text, {})) == 0
}

test_mending_to_come[text] if {
	some text in [
		"ripped at the anchor, patch on order", "ripped at the anchor, repairs outstanding",
		"ripped at the anchor, was not accepted", "ripped at the anchor, by the closed-cell foam",
		"ripped at the anchor, second retest failed",
	]
	count(_found(text, {})) == 1
}

# Notes on site leave out the e of an ending.
test_put_right_in_short if {
	count(_found("ripped at the anchor, patchd + rolled", {})) == 0
	count(_found("ripped at the anchor, re-seal'd", {})) == 0
	count(_found("ripped at the anchor, not patchd", {})) == 1
	count(_found("ripped at the anchor, crew held", {})) == 1
}
