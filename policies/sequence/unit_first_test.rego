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
