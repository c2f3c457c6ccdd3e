package sequence.opening_lap_test

import data.lib.season_bench_test as bench
import data.sequence.opening_lap

_found(place, told) := found if {
	line := bench.sheet({
		"items": [bench.own],
		"texts": {"place": place, "remark": told},
		"cells": {"material": "C12", "remark": "V12"},
	})
	found := opening_lap.findings with input as bench.document([line], [], [])
}

test_whole_finding if {
	_found("Window type 4, sill", "Came late; lapped 100 mm over the jamb flashing.") == {{
		"line": "W!12",
		"cells": ["C12", "V12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) at the sill laps over the piece above it",
			`("lapped 100 mm over the jamb flashing")`,
		]),
	}}
}

test_ways_to_say_it[told] if {
	some place, told in {
		"Louver jambs": "runs 3 in. onto the face of the head strip",
		"Door sill": "Stuck over the ends of jamb tapes",
		"Window sill": "laid last, on top of the jamb strips",
		"Sills, level 2": "over both jambs",
		"Sill at the gate": "over the lower ends of the side tapes",
	}
	count(_found(place, told)) == 1
}

test_silent[name] if {
	some name, case in {
		"up the framing": ["Sill", "pan laps 6 in. over the jamb studs"],
		"a side wall": ["Sill", "over side wall 6 in."],
		"the upper one": ["Jambs", "laps 3 in. over the sill strip"],
		"told of the jamb": ["Sill", "set first; jamb strips lapped over it, head set over jamb strips"],
		"said not to": ["Sill", "must not lap over the jamb strips"],
		"both in one row": ["Sill and jambs", "laps 4 in. over the jamb strips"],
		"no part named": ["Grid 4", "laps 4 in. over the jamb strips"],
	}
	count(_found(case[0], case[1])) == 0
}

# A row of a whole opening names the part before the lap.
test_part_named_in_the_words[told] if {
	some told, n in {
		"jambs first; sill tape lapped 3 in. over jamb strips": 1,
		"jamb flashing set over both ends of head flashing": 1,
		"sill first, jamb strips over sill, head over jamb strips": 0,
		"sill and jamb pieces over jamb strips": 0,
		"sill pan turned up, 150 mm over jamb studs": 0,
		"laps 4 in. over the jamb strips": 0,
	}
	some place in ["Window, all sides", "Sill / jamb / head"]
	count(_found(place, told)) == n
}

test_reversed_lap_is_told_by_another if {
	line := bench.sheet({
		"items": [bench.own],
		"texts": {"place": "Sill", "remark": "reverse lap: laps over the jamb strips"},
		"signals": [bench.signal("lap_reversed", "remark", "reverse lap")],
	})
	found := opening_lap.findings with input as bench.document([line], [], [])
	count(found) == 0
}

# What is told before a "so" is why, and not what laps.
test_reason_before_the_lap[told] if {
	some told, n in {
		"header came early so side pieces jambs run over the head tape": 1,
		"head tape is up, hence jamb strips set over head tape": 1,
		"jambs are in so the head goes over the jamb strips": 0,
		"sill is late so head runs over the jamb strips": 0,
	}
	count(_found("Door jambs", told)) == n
}
