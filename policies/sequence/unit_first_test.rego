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
