package performance.vapor_limit_test

import data.lib.desk_test as desk
import data.performance.vapor_limit

_tight := desk.limit("vapor_ng", null, 5.72135, {"scope": "vivarium", "text": "vivarium: 0.1 perm or less"})

_open := desk.limit("vapor_ng", 572.135, null, {"text": "outside of batts: 10 perms or more"})

_found(ng, text, more, limits) := found if {
	product := desk.product("FM-4", 7, {"figures": {"vapor_ng": desk.figure(ng, text, "perm")}})
	place := object.union({"place": "Vivarium E, window wall"}, more)
	doc := desk.document([desk.row(12, "FM-4", place), desk.row(14, "FM-4", place)], [product], limits)
	found := vapor_limit.findings with input as doc
}

test_fires_in_full if {
	_found(915.416, "16", {}, [_tight]) == {{
		"line": "W!12",
		"cells": ["B12", "C12"],
		"message": concat("", [
			"FM-4 at Vivarium E, window wall has a vapor permeance of 16 perm; ",
			"the notes ask for at most 0.1 perm there",
		]),
		"related": [
			{"at": _tight.at, "cells": ["A3"], "what": "vivarium: 0.1 perm or less"},
			{"line": "W!14", "cells": ["B14", "C14"], "what": "the same sheet"},
		],
	}}
}

test_too_tight if {
	some f in _found(57.2135, "1", {}, [_open])
	endswith(f.message, "has a vapor permeance of 1 perm; the notes ask for at least 10 perm there")
}

# A limit for filled studs holds where the row tells of them; where nothing lies outside either, the wall's own rule
# tells it.
test_filled_studs if {
	limit := desk.limit("vapor_ng", 572.135, null, {"when": ["studs_filled"]})
	filled := {"role": "membrane", "signals": [desk.said(12, "studs_filled", "remark")]}
	count(_found(57.2135, "1", {}, [limit])) == 0
	count(_found(57.2135, "1", filled, [limit])) == 1
	bare := object.union(filled, {"texts": {"remark": "no exterior insulation"}})
	frost := [{"line": "W!12", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": -14, "mean_max_c": -2}]
	product := desk.product("FM-4", 7, {"figures": {"vapor_ng": desk.figure(1.7, "x", "ng")}})
	doc := object.union(desk.document([desk.row(12, "FM-4", bare)], [product], [limit]), {"windows": frost})
	count(vapor_limit.findings) == 0 with input as doc
	count(vapor_limit.findings) == 1 with input as object.union(doc, {"windows": []})
}

test_silent[name] if {
	some name, case in {
		"elsewhere": {"ng": 915.416, "more": {"place": "Office bar S"}, "limits": [_tight]},
		"at the limit": {"ng": 5.72135, "more": {}, "limits": [_tight]},
		"at the rounded limit": {"ng": 5.73, "more": {}, "limits": [_tight]},
		"open enough": {"ng": 572.135, "more": {}, "limits": [_open]},
		"struck": {"ng": 915.416, "more": {"struck": true}, "limits": [_tight]},
		"insulation": {"ng": 915.416, "more": {"role": "insulation"}, "limits": [_tight]},
	}
	count(_found(case.ng, "x", case.more, case.limits)) == 0
}

test_asked_of_the_field[where] if {
	some where, n in {
		"Corridor E, jamb strip": 0,
		"Corridor E, field at jambs": 1,
		"Corridor E": 1,
		"Corridor E, coping": 0,
	}
	count(_found(57.2135, "1", {"place": where}, [_open])) == n
}

test_missing if {
	doc := desk.document([desk.row(12, "FM-4", {"place": "Vivarium"})], [desk.product("FM-4", 7, {})], [_tight])
	count(vapor_limit.findings) == 0 with input as doc
}

# A limit of the vapor barrier on the room side says nothing of the sheet outside.
test_room_side[name] if {
	side := desk.limit("vapor_ng", null, 60, {"text": "Vapour barrier on the room side: 60 ng or less"})
	retarder := object.union(desk.own(12, "FM-4"), {"family": "kraft-facer"})
	some name, case in {
		"air barrier": {"items": [desk.own(12, "FM-4")], "limit": side, "count": 0},
		"vapor barrier": {"items": [retarder], "limit": side, "count": 1},
		"no side told": {"items": [desk.own(12, "FM-4")], "limit": object.union(side, {"text": "60 ng or less"}), "count": 1},
	}
	product := desk.product("FM-4", 7, {"figures": {"vapor_ng": desk.figure(150, "150", "ng")}})
	doc := desk.document([desk.row(12, "FM-4", {"items": case.items})], [product], [case.limit])
	found := vapor_limit.findings with input as doc
	count(found) == case.count
}

# How open the air barrier of a wall must be is not asked of what lies inside of its studs.
test_inside_of_the_studs[name] if {
	inside := object.union(_open, {"text": "film inside of the studs: 10 perms or more"})
	some name, case in {
		"film inside": {"place": "Vivarium N, interior side of studs", "limit": _open, "count": 0},
		"sheet outside": {"place": "Vivarium N, over sheathing", "limit": _open, "count": 1},
		"asked inside": {"place": "Vivarium N, inside of studs", "limit": inside, "count": 1},
	}
	count(_found(57.2135, "1", {"place": case.place}, [case.limit])) == case.count
}

test_strip_on_a_sheet_in_place if {
	row := desk.row(12, "FM-4", {"place": "Vivarium E, window wall"})
	bed := object.union(row.items[0], {"id": "bed", "slot": "under", "product": "FM-1", "class": "membrane"})
	product := desk.product("FM-4", 7, {"figures": {"vapor_ng": desk.figure(915.416, "16", "perm")}})
	on_sheet := object.union(row, {"items": array.concat(row.items, [bed])})
	count(vapor_limit.findings) == 1 with input as desk.document([row], [product], [_tight])
	count(vapor_limit.findings) == 0 with input as desk.document([on_sheet], [product], [_tight])
}

# Flashings are tight by their nature.
test_flashings_need_not_be_open[role] if {
	some role, n in {"flashing": 0, "membrane": 1}
	count(_found(57.2135, "1", {"place": "Vivarium N, base", "role": role}, [_open])) == n
}

# The retarder of the room side is not what must be open.
test_retarder_inside[place] if {
	some place, n in {
		"Interior vapor retarder, level 2": 0,
		"Level 2, interior retarder": 0,
		"Level 2": 1,
		"Interior court, north": 1,
	}
	count(_found(57.2135, "1", {"texts": {"place": place}}, [_open])) == n
}

# A note on the outer sheet may say in brackets where the retarder lies; one on the retarder may say so too.
test_room_side_in_brackets[text] if {
	some text, count_of in {
		"Exterior sheet: 10 perm or more (the vapor retarder is on the room side)": 1,
		"Outboard coating on the room side of the cavity: 10 perm or more": 0,
		"Vapor retarder (room side, not the exterior sheet): 10 perm or more": 0,
	}
	limit := desk.limit("vapor_ng", 572.135, null, {"text": text})
	count(_found(57.2135, "1", {}, [limit])) == count_of
}

# A smart retarder lies on the room side, unless the limit names it.
test_smart_retarder_is_inside[name] if {
	some name, case in {
		"smart": {"family": "vapor-retarder-smart", "keys": [], "n": 0},
		"a limit for it": {"family": "vapor-retarder-smart", "keys": ["vapor-retarder-smart"], "n": 1},
		"a sheet": {"family": "self-adhered-sheet-unspecified", "keys": [], "n": 1},
	}
	row := desk.row(12, "FM-4", {})
	item := object.union(row.items[0], {"family": case.family, "keys": [case.family]})
	limit := object.union(_open, {"keys": case.keys})
	count(_found(57.2135, "1", {"items": [item]}, [limit])) == case.n
}
