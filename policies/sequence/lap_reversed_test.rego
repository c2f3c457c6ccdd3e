package sequence.lap_reversed_test

import data.lib.season_bench_test as bench
import data.sequence.lap_reversed

_behind := bench.signal("lap_reversed", "remark", "tucked behind upper leg")

_found(line) := found if {
	found := lap_reversed.findings with input as bench.document([bench.sheet(line)], [], [])
}

test_whole_finding if {
	_found({"signals": [_behind]}) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat(" ", [
			"The lap at FM-1 (rubberized-asphalt-membrane) runs against the water",
			`("tucked behind upper leg")`,
		]),
	}}
}

test_words_of_the_lap_itself_do_not_close_it if {
	told := bench.signal("lap_reversed", "remark", "lower strip run over the upper")
	count(_found({"signals": [told, bench.signal("lap_shingled", "remark", "run over")]})) == 1
}

test_open_edge_is_told_with_it if {
	open := bench.signal("edge_open", "remark", "open top edge")
	sealed := bench.signal("edge_sealed", "remark", "bead at drip")
	some f in _found({"signals": [_behind, open]})
	endswith(f.message, ", and its edge is open")
	count(_found({"signals": [_behind, open, sealed]})) == 1
}

test_piece_that_comes_over_the_edge_too[name] if {
	lap := bench.signal("lap_reversed", "edge", "behind the leg")
	some name, case in {
		"over it": ["Strip behind the leg and carried over its upper edge onto the sheet", 0],
		"down its face": ["Strip behind the leg and down over the face of the sheet", 1],
	}
	count(_found({"signals": [lap], "texts": {"edge": case[0]}})) == case[1]
}

test_seal_of_another_cell_does_not_help if {
	count(_found({"signals": [_behind, bench.signal("edge_sealed", "touches", "bead")]})) == 1
}

test_bar_above_closes_no_lap_of_an_opening[name] if {
	lap := bench.signal("lap_reversed", "edge", "sill over the jambs")
	bar := bench.signal("edge_sealed", "edge", "bar")
	some name, case in {
		"elsewhere": ["Sill over the jambs; bar along the back", 0],
		"at the lap": ["sill over the jambs with bar at the lap; bead", 1],
	}
	text := {"edge": lower(case[0])}
	count(_found({"signals": [lap, bar], "texts": text})) == 1 - case[1]
}

test_metal_flashing_has_laps_too if {
	count(_found({"signals": [_behind], "role": "metal"})) == 1
}

test_silent[name] if {
	some name, line in {
		"barred, sealed and lapped in the same cell": {"signals": [_behind, bench.signal("edge_sealed", "remark", "bar")]},
		"lapped over from above": {"signals": [_behind, bench.signal("lap_shingled", "remark", "lapped over")]},
		"denied": {"signals": [_behind, bench.denial("lap_reversed", "edge", "not tucked behind")]},
		"nothing said": {},
		"struck": {"signals": [_behind], "struck": true},
		"no sheet": {"signals": [_behind], "role": "sealant"},
	}
	count(_found(line)) == 0
}

# What laps over is the piece below that the sheet lies behind; a counterflashing lies above, and so does what the sheet
# is not behind.
test_piece_below_that_laps_over[name] if {
	lap := bench.signal("lap_reversed", "remark", "behind")
	over := bench.signal("lap_shingled", "remark", "laps over")
	some name, case in {
		"the piece below": ["long lower apron", "lower apron", 1],
		"base": ["roof base flashing", "base flashing", 1],
		"counterflashing": ["counterflashing", "counterflashing", 0],
		"another piece": ["base flashing", "lower skirt", 0],
	}
	items := [
		_told("remark", case[0], {"side": "object", "signals": ["lap_reversed"], "clause": "sheet behind it"}),
		_told("remark", case[1], {"side": "subject", "signals": ["lap_shingled"], "clause": "which laps over it"}),
	]
	line := {"signals": [lap, over], "items": array.concat([bench.fm_1], items)}
	count(_found(line)) == case[2]
}

_told(slot, text, more) := object.union(bench.item_of(slot, text, "metal"), more)

# The hem of a drip closes no lap above it; a bead there does.
test_hem_closes_no_lap[name] if {
	lap := bench.signal("lap_reversed", "edge", "leg over the face")
	hem := bench.signal("edge_sealed", "edge", "hemmed")
	bead := bench.signal("edge_sealed", "edge", "bead")
	some name, case in {
		"a hem": [[lap, hem], 1],
		"a hem and a bead": [[lap, hem, bead], 0],
	}
	count(_found({"signals": case[0]})) == case[1]
}

# A bar at which the upper piece ends closes no head of the lower one that laps over it; one at the head does.
test_bar_where_the_upper_ends[text] if {
	lap := bench.signal("lap_reversed", "edge", "over its lower edge")
	bar := bench.signal("edge_sealed", "edge", "bar")
	some text, n in {
		"Higher sheet ended at the bar, sheet beneath laps over its lower edge": 1,
		"Sheet beneath laps over its lower edge, head under a bar": 0,
		"Higher sheet ended at the bar, sheet beneath laps over its lower edge, second bar at its head": 0,
	}
	count(_found({"signals": [lap, bar], "texts": {"edge": text}})) == n
}
