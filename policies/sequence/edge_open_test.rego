package sequence.edge_open_test

import data.lib.bench_test as parts
import data.lib.season_bench_test as bench
import data.sequence.edge_open

_open := object.union(
	bench.signal("edge_open", "edge", "none at top, held by the insulation"),
	{"at": {"sheet": "W", "row": 12, "cell": "O12"}},
)

_note := bench.limit("termination", {"text": "Every free edge is sealed, clamped or lapped"})

_found(signals, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet({"signals": signals})], [], []), limits, [])
	found := edge_open.findings with input as doc
}

test_whole_finding if {
	_found([_open], [_note]) == {{
		"line": "W!12",
		"cells": ["O12"],
		"message": concat(" ", [
			"An edge of FM-1 (rubberized-asphalt-membrane) stays open",
			`("none at top, held by the insulation"); the notes ask for every edge to be closed`,
		]),
		"severity": "error",
		"related": [{"at": _note.at, "cells": ["A9"], "what": "Every free edge is sealed, clamped or lapped"}],
	}}
}

test_without_note if {
	some f in _found([_open], [])
	not f.severity
	endswith(f.message, ", with no bar, bead or lap over it")
}

test_seal_of_another_cell_does_not_help if {
	count(_found([_open, bench.signal("edge_sealed", "touches", "bead")], [])) == 1
}

test_denied_seal_does_not_help if {
	count(_found([_open, bench.denial("edge_sealed", "edge", "no bead")], [])) == 1
}

test_silent[name] if {
	some name, signals in {
		"sealed in the same cell": [_open, bench.signal("edge_sealed", "edge", "bead at edge")],
		"lapped from above": [_open, bench.signal("lap_shingled", "edge", "wall sheet laps over")],
		"denied": [_open, bench.denial("edge_open", "remark", "not left loose")],
		"the lap is reversed, told there": [_open, bench.signal("lap_reversed", "remark", "behind the leg")],
		"nothing said": [],
	}
	count(_found(signals, [_note])) == 0
}

# The sheet above is loose until it comes down over the edge; other words beside a loose edge are no lap.
test_loose_sheet_above[text] if {
	some text, many in {
		"head tape up behind the wrap, wrap (kept loose here) lapped over it 100 mm": 0,
		"strip under the wall sheet, sheet (left loose for now), over it 4 in.": 0,
		"strip over the slab edge, top (left loose)": 1,
		"foot (left loose), 3 in. laps": 1,
	}
	said := regex.find_n(`(left|kept) loose`, text, 1)[0]
	row := bench.sheet({"signals": [bench.signal("edge_open", "lap", said)], "texts": {"lap": text}})
	doc := bench.document([row], [], [])
	found := edge_open.findings with input as doc
	count(found) == many
}

# A bar holds the edge without a bead, unless a note asks for both; words that deny the bar leave it open.
test_bar_without_bead[name] if {
	some name, case in {
		"either": {"seal": "clamping bar", "open": "no sealant on", "note": "Mastic or bar at all top edges", "n": 0},
		"both": {"seal": "clamping bar", "open": "no sealant on", "note": "Top edges: bar and mastic", "n": 1},
		"sealed bar": {"seal": "bar", "open": "without bead", "note": "Sealant over the bar at top edges", "n": 1},
		"no bar": {"seal": "term bar", "open": "no bar", "note": "Mastic or bar at all top edges", "n": 1},
		"a bead elsewhere": {"seal": "bead", "open": "no mastic at", "note": "Mastic or bar", "n": 1},
	}
	denied := bench.denial("edge_sealed", "edge", case.open)
	opened := object.union(_open, {"text": case.open, "slot": "edge"})
	signals := [bench.signal("edge_sealed", "edge", case.seal), opened, denied]
	count(_found(signals, [bench.limit("termination", {"text": case.note})])) == case.n
}

# A liquid needs neither bar nor bead; a lifted one is open all the same, and a note may ask for every edge.
test_liquid_without_bead[name] if {
	some name, case in {
		"tapered out": {"family": "liquid-flashing", "said": "no bar", "notes": [], "n": 0},
		"sprayed": {"family": "fluid-applied-stpe-air-barrier", "said": "without sealant", "notes": [], "n": 0},
		"the notes ask": {"family": "liquid-flashing", "said": "no bar", "notes": [_note], "n": 1},
		"lifted": {"family": "liquid-flashing", "said": "left loose", "notes": [], "n": 1},
		"a sheet": {"family": "rubberized-asphalt-membrane", "said": "no bar", "notes": [], "n": 1},
	}
	item := parts.item("material", "LX-1", case.family, "membrane", [case.family])
	row := bench.sheet({"signals": [object.union(_open, {"text": case.said, "slot": "edge"})], "items": [item]})
	doc := bench.with_notes(bench.document([row], [], []), case.notes, [])
	found := edge_open.findings with input as doc
	count(found) == case.n
}
