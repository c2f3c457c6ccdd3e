package performance.combustible_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.performance.combustible

_board(family) := base.item("material", "RB-2", family, "insulation", [])

_note := {
	"id": "noncombustible_insulation",
	"no": false,
	"text": "noncombustible insulation",
	"at": {"sheet": "N", "row": 4, "cell": "B4"},
}

_found(family, more, notes) := found if {
	row := bench.line_of(12, object.union({"role": "insulation", "items": [_board(family)]}, more))
	doc := object.union(bench.document([row], [], []), {"project": {"signals": notes}})
	found := combustible.findings with input as doc
}

test_fires_in_full if {
	_found("xps", {}, [_note]) == {{
		"line": "W!12",
		"cells": ["C12"],
		"message": "RB-2 (xps) is foam, and the notes ask for insulation that does not burn",
		"related": [{"at": _note.at, "cells": ["B4"], "what": "noncombustible insulation"}],
	}}
}

_beside(family, more) := object.union(
	{"role": "membrane", "items": [
		base.item("material", "FM-1", "fluid-applied-acrylic-air-barrier", "membrane", []),
		base.item("touches", "RB-2", family, "insulation", []),
	]},
	more,
)

test_foam_beside_a_sheet if {
	some found in _found("xps", _beside("polyiso", {}), [_note])
	found.cells == ["G12"]
	startswith(found.message, "RB-2 (polyiso) outside of FM-1 (fluid-applied-acrylic-air-barrier) is foam")
}

test_foam_that_is_none_of_the_wall if {
	count(_found("xps", _beside("polyiso", {"place": "Roof, main"}), [_note])) == 0
	count(_found("xps", _beside("closed-cell-spray-foam", {}), [_note])) == 0 # around a frame
}

test_silent[name] if {
	some name, case in {
		"mineral wool": ["mineral-wool", {}, [_note]],
		"no note": ["xps", {}, []],
		"below grade": ["xps", {"group": "WT-9 BELOW GRADE"}, [_note]],
		"on the roof": ["polyiso", {"place": "Roof, main"}, [_note]],
		"no insulation": ["xps", {"role": "membrane"}, [_note]],
		"the notes allow it": ["xps", {}, [object.union(_note, {"no": true})]],
	}
	count(_found(case[0], case[1], case[2])) == 0
}

# A note that names its wall types.
_of(walls) := {
	"kind": "noncombustible",
	"min": null,
	"max": null,
	"roles": [],
	"keys": [],
	"scope": walls,
	"when": [],
	"text": "Insulation in W7 and W9: stone wool only",
	"at": {"sheet": "N", "row": 5, "cell": "B5"},
}

_in(group, more) := found if {
	row := bench.line_of(12, object.union(
		{"role": "insulation", "group": group, "items": [_board("polyiso")]},
		more,
	))
	doc := object.union(bench.document([row], [], []), {"project": {"signals": [], "limits": [_of("w7, w9")]}})
	found := combustible.findings with input as doc
}

test_by_wall_type if {
	count(_in("W9", {})) == 1
	count(_in("W8", {})) == 0
}

test_sprayed_into_a_gap if {
	foam := [_board("closed-cell-spray-foam")]
	count(_in("W9", {"items": foam, "place": "Door frames, level 2", "texts": {"remark": "gap 20 mm"}})) == 0
	count(_in("W9", {"items": foam, "place": "North wall", "texts": {"remark": "75 mm over the sheet"}})) == 1
}

_above(said) := {
	"kind": "noncombustible", "min": null, "max": null, "roles": [], "keys": [], "scope": "", "over": [], "when": [],
	"letter": "", "text": said, "at": {"sheet": "N", "row": 5, "cell": "B5"},
}

_high(said, more, walls) := count(found) if {
	row := bench.line_of(12, object.union({"role": "insulation", "items": [_board("polyiso")]}, more))
	project := {"signals": [], "limits": [_above(said)]}
	doc := object.union(bench.document(array.concat([row], walls), [], []), {"project": project})
	found := combustible.findings with input as doc
}

# A note of what lies above some height holds there alone, and not where the wall itself is built with foam.
test_above_a_height if {
	_high("Above 24 in. from grade noncombustible insulation", {"place": "north, level 3"}, []) == 1
	_high("Insulation above the plinth: no foam plastic", {"place": "north, level 3"}, []) == 1
	_high("Insulation: no foam plastic", {"place": "north, level 3"}, []) == 0
	_high("Above 24 in. from grade noncombustible insulation", {"texts": {"place": "plinth, north"}}, []) == 0
	_high("Above 24 in. from grade noncombustible insulation", {"texts": {"front": "granite base"}}, []) == 0
	wall := object.union(bench.line_of(3, {"table": "Types#1", "role": "insulation", "items": [_board("xps")]}), {
		"mark": "W9",
		"texts": {"layers": "block, XPS, stone"},
		"cells": {"layers": "B3"},
	})
	_high("Above 24 in. from grade noncombustible insulation", {"group": "W9", "role": "insulation"}, []) == 1
	_high("Above 24 in. from grade noncombustible insulation", {"group": "W9", "role": "insulation"}, [wall]) == 0
}

# The short word of a foundation is one.
test_silent_at_a_foundation_in_short if {
	_high("Above grade walls: noncombustible insulation", {"place": "Fdn boards, west side"}, []) == 0
	_high("Above grade walls: noncombustible insulation", {"place": "Fin boards, west side"}, []) == 1
}
