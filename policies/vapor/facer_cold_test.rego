package vapor.facer_cold_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.vapor.facer_cold

_batt := base.item("material", "IN-4", "glass-fiber-kraft-faced", "insulation", [])

_out := bench.signal("facer_outward", "remark", "kraft face to the sheathing")

_in := bench.denial("facer_outward", "remark", "kraft face to the room")

_winter(low, high) := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": low, "mean_max_c": high}

_found(signal, window, notes) := found if {
	row := bench.line_of(12, {"role": "insulation", "items": [_batt], "signals": [signal]})
	doc := object.union(bench.document([row], [], []), {"windows": [window], "project": {"signals": notes}})
	found := facer_cold.findings with input as doc
}

_note := object.union(_in, {"at": {"sheet": "N", "row": 3, "cell": "A3"}})

test_fires_in_full if {
	_found(_out, _winter(-14, -2), [_note]) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": `the facing of the insulation is on its cold side ("kraft face to the sheathing")`,
		"severity": "error",
		"related": [{"at": {"sheet": "N", "row": 3, "cell": "A3"}, "cells": ["A3"], "what": "kraft face to the room"}],
	}}
}

test_severity[name] if {
	some name, case in {
		"cold": [_winter(-14, -2), "error"],
		"cool": [_winter(0, 6), "warning"],
	}
	{found.severity | some found in _found(_out, case[0], [])} == {case[1]}
}

test_silent[name] if {
	some name, case in {
		"to the room": [_in, _winter(-14, -2)],
		"mild winter": [_out, _winter(8, 16)],
	}
	count(_found(case[0], case[1], [])) == 0
}

# In a mild winter the row's own words for the same facing count, in another cell.
test_against_the_row_itself[name] if {
	some name, case in {
		"same facing": [bench.denial("facer_outward", "material", "kraft to room"), 1],
		"another facing": [bench.denial("facer_outward", "material", "foil to room"), 0],
		"same cell": [_in, 0],
	}
	row := bench.line_of(12, {"role": "insulation", "items": [_batt], "signals": [_out, case[0]]})
	doc := object.union(bench.document([row], [], []), {"windows": [_winter(8, 16)], "project": {"signals": []}})
	found := facer_cold.findings with input as doc
	count(found) == case[1]
	every f in found { f.severity == "warning" }
}
