package sequence.unit_first_test

import data.lib.season_bench_test as bench
import data.sequence.unit_first

_cells := {"install": "K12", "unit_set": "W12"}

_found(dates, more) := found if {
	days := {slot: bench.day(day, day, _cells[slot]) | some slot, day in dates}
	line := bench.sheet(object.union({"dates": days, "cells": _cells}, more))
	found := unit_first.findings with input as bench.document([line], [], [])
}

_swapped := {"install": "2027-06-24", "unit_set": "2027-06-22"}

test_whole_finding if {
	_found(_swapped, {"texts": {"place": "opening 12", "type": "liquid flashing"}}) == {{
		"line": "W!12",
		"cells": ["K12", "W12"],
		"message": "The unit is set on 22 Jun 2027, before its opening is flashed on 24 Jun 2027",
	}}
}

# The remark tells when the frames were set.
_told(more) := found if {
	days := {
		"install": bench.day("2027-06-24", "2027-06-24", "K12"),
		"unit_set": bench.day("2027-06-22", "2027-06-22", "R12"),
	}
	line := bench.sheet(object.union({"dates": days, "cells": {"install": "K12"}}, more))
	found := unit_first.findings with input as bench.document([line], [], [])
}

test_told_of_a_sill if {
	found := _told({"texts": {"place": "openings N, sill and jambs"}})
	{cell | some f in found; some cell in f.cells} == {"K12", "R12"}
	count(_told({"texts": {"place": "strip round the frames"}})) == 0
	count(_told({"texts": {"place": "door jambs"}})) == 0
	count(_told({"texts": {"place": "bay sill"}, "role": "metal"})) == 0
}

test_silent[name] if {
	some name, case in {
		"the same day": [{"install": "2027-06-22", "unit_set": "2027-06-22"}, {}],
		"after": [{"install": "2027-06-22", "unit_set": "2027-06-24"}, {}],
		"no unit": [{"install": "2027-06-22"}, {}],
		"head strip": [_swapped, {"texts": {"place": "window heads"}}],
		"over the flange": [_swapped, {"texts": {"type": "tape on the flange"}}],
		"struck": [_swapped, {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}

# Windows and pans of one place, each in a row of its own.
_row(n, called, place, days, more) := bench.sheet(object.union(
	{
		"id": sprintf("W!%d", [n]),
		"row": n,
		"table": "W#4",
		"group": "B2",
		"place": place,
		"texts": {"type": called, "place": place},
		"cells": {"install": sprintf("K%d", [n]), "type": sprintf("D%d", [n])},
		"dates": {"install": object.union(
			bench.day(days[0], days[0], sprintf("K%d", [n])),
			{"to": days[1], "state": "span"},
		)},
	},
	more,
))

_of_rows(lines) := found if {
	found := unit_first.findings with input as bench.document(lines, [], [])
}

_early := _row(20, "door frames", "court", ["2027-03-08", "2027-03-10"], {"role": "other"})

test_units_in_a_row_of_their_own if {
	some found in _of_rows([_early, _row(21, "threshold pans", "court", ["2027-03-15", "2027-03-16"], {})])
	found.line == "W!21"
	contains(found.message, "after door frames of the same place were set on")
}

test_units_apart[name] if {
	some name, pan in {
		"the pans first": _row(21, "threshold pans", "court", ["2027-03-01", "2027-03-02"], {}),
		"the last day of the pans": _row(21, "threshold pans", "court", ["2027-03-10", "2027-03-11"], {}),
		"another place": _row(21, "threshold pans", "lane", ["2027-03-15", "2027-03-16"], {}),
		"another wall": _row(21, "threshold pans", "court", ["2027-03-15", "2027-03-16"], {"group": "B3"}),
		"what goes over the frame": _row(21, "head flashing", "court", ["2027-03-15", "2027-03-16"], {}),
		"metal sills": _row(21, "sills", "court", ["2027-03-15", "2027-03-16"], {"role": "metal"}),
	}
	count(_of_rows([_early, pan])) == 0
}

test_floor_by_floor if {
	count(_of_rows([
		_row(19, "threshold pans", "court", ["2027-03-01", "2027-03-02"], {}),
		_early,
		_row(21, "threshold pans", "court", ["2027-03-15", "2027-03-16"], {}),
	])) == 0
}

test_a_frame_that_is_no_unit if {
	count(_of_rows([
		_row(20, "sealant at door frames", "court", ["2027-03-08", "2027-03-10"], {"role": "sealant"}),
		_row(21, "threshold pans", "court", ["2027-03-15", "2027-03-16"], {}),
	])) == 0
}
