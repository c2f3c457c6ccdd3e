package sequence.weeps_none_test

import data.lib.season_bench_test as bench
import data.sequence.weeps_none

_none := object.union(
	bench.denial("weeps", "edge", "weep holes left out"),
	{"at": {"sheet": "W", "row": 12, "cell": "O12"}},
)

_note := bench.limit("weep_spacing_mm", {"text": "Weeps at 600 mm or closer"})

_found(more, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(more)], [], []), limits, [])
	found := weeps_none.findings with input as doc
}

_angle := {"place": "Shelf angle, level 3", "signals": [_none]}

test_whole_finding if {
	_found(_angle, [_note]) == {{
		"line": "W!12",
		"cells": ["O12"],
		"message": `FM-1 (rubberized-asphalt-membrane) has no weeps ("weep holes left out"); the notes ask for them`,
		"severity": "error",
		"related": [{"at": _note.at, "cells": ["A9"], "what": "Weeps at 600 mm or closer"}],
	}}
}

test_without_note if {
	some f in _found(_angle, [])
	not f.severity
}

test_silent[name] if {
	some name, more in {
		"there are weeps": {"place": "Shelf angle", "signals": [bench.signal("weeps", "edge", "weeps 24 oc")]},
		"says nothing": {"place": "Shelf angle", "signals": []},
		"in no masonry": {"place": "Window sill pan", "signals": [_none]},
		"struck": object.union(_angle, {"struck": true}),
	}
	count(_found(more, [_note])) == 0
}
