package pairing.concrete_age_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.pairing.concrete_age

_note := {
	"kind": "concrete_age_days",
	"min": 14,
	"max": null,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "Concrete 14 days old or more",
	"at": {"sheet": "Notes", "row": 7, "cell": "B7"},
}

_span(from, to, min, max) := {"spans": {"concrete_age_days": {
	"from": from,
	"to": to,
	"min": min,
	"max": max,
	"last": max,
}}}

_found(items, more, limits) := found if {
	doc := bench.schedule(items, more, [])
	found := concrete_age.findings with input as object.union(doc, {"project": {"limits": limits, "signals": []}})
}

_row := [bench.sbs, bench.concrete]

test_fires if {
	_found(_row, _span("2026-07-06", "2026-07-13", 7, 7), [_note]) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"severity": "error",
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) goes on concrete that is 7 days old ",
			"(placed 6 Jul 2026, sheet 13 Jul 2026); the notes ask for 14 days",
		]),
		"related": [{
			"at": {"sheet": "Notes", "row": 7, "cell": "B7"},
			"cells": ["B7"],
			"what": "Concrete 14 days old or more",
		}],
	}}
}

test_usual_age_is_a_warning if {
	found := _found(_row, _span("2026-07-06", "2026-07-10", 4, 4), [])
	{f.severity | some f in found} == {"warning"}
	{endswith(f.message, "7 days is the usual least") | some f in found} == {true}
}

test_only_perhaps_too_young_is_a_warning if {
	{f.severity | some f in _found(_row, _span("2026-07-06", "2026-07-17", 11, 15), [_note])} == {"warning"}
}

test_age_and_limit_of_the_row_itself if {
	line := object.union(
		{"figures": {"concrete_age_days": {"min": 14, "max": 14, "text": "14"}}},
		_span("", "", 5, 5),
	)
	some f in _found(_row, line, [])
	f.severity == "error"
	f.message == concat("", [
		"FM-1 (rubberized-asphalt-membrane) goes on concrete that is 5 days old; ",
		"the row itself asks for 14 days",
	])
}

test_a_joint_waits_for_the_age_of_the_notes if {
	sealant := bench.item("material", "SL-1", "polyurethane-sealant", "sealant", ["polyurethane"])
	line := object.union({"role": "sealant"}, _span("2026-07-02", "2026-07-08", 6, 6))
	count(_found([sealant, bench.concrete], line, [_note])) == 1
	count(_found([sealant, bench.concrete], line, [])) == 0
}

test_strictest_counts if {
	loose := object.union(_note, {"min": 7})
	some f in _found(_row, _span("2026-07-06", "2026-07-16", 10, 10), [loose, _note])
	endswith(f.message, "the notes ask for 14 days")
}

_primed := {"primed_concrete_age_days": desk.figure(5, "5 d", "d")}

test_own_age_over_its_primer if {
	stated := object.union(_primed, {"concrete_age_days": desk.figure(21, "21 d", "d")})
	old := _span("2026-07-06", "2026-07-12", 6, 6)
	young := _span("2026-07-06", "2026-07-10", 4, 4)
	count(_found(_row, object.union(old, {"figures": _primed}), [])) == 0
	count(_found(_row, object.union(young, {"figures": _primed}), [])) == 1
	count(_found(_row, object.union(old, {"figures": stated}), [])) == 1 # what the row itself asks for goes first
}

test_board_hung_the_day_before if {
	board := object.union(bench.concrete, {"family": "glass-mat-gypsum-sheathing", "keys": ["gypsum"], "unknown": false})
	count(_found([bench.sbs, board], _span("2026-07-06", "2026-07-07", 1, 1), [])) == 0
}

test_placed_some_day_of_a_month if {
	dates := {"dates": {"placed": {"state": "span", "from": "2026-06-01", "to": "2026-06-30", "text": "June 26"}}}
	line := object.union(dates, _span("2026-06-01", "2026-07-08", 8, 37))
	count(_found(_row, line, [_note])) == 0
	count(_found(_row, line, [object.union(_note, {"min": 42})])) == 1
}

test_silent[name] if {
	some name, case in {
		"on the day": {"span": _span("2026-05-26", "2026-06-09", 14, 14), "limits": [_note]},
		"usual, on the day": {"span": _span("2026-07-06", "2026-07-13", 7, 7), "limits": []},
		"not yet placed is another topic": {"span": _span("2026-05-26", "2026-05-19", -7, -7), "limits": [_note]},
		"no dates": {"span": {}, "limits": [_note]},
		"note is for roofs": {
			"span": _span("2026-07-06", "2026-07-16", 10, 10),
			"limits": [object.union(_note, {"scope": "roof"})],
		},
		"tested": {
			"span": object.union(
				_span("2026-07-06", "2026-07-10", 4, 4),
				{"signals": [bench.said("moisture_tested", "tested dry")]},
			),
			"limits": [],
		},
	}
	count(_found(_row, case.span, case.limits)) == 0
}
