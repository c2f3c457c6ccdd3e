package sequence.cladding_first_test

import data.lib.season_bench_test as bench
import data.sequence.cladding_first

_layer(row, order, role, day) := bench.line_of(row, {
	"order": order,
	"role": role,
	"group": "W1",
	"dates": {"install": bench.day(day, day, "")},
})

_sheet(order, day) := object.union(_layer(12, order, "membrane", day), {"items": [bench.fm_1]})

_found(lines) := found if {
	found := cladding_first.findings with input as bench.document(lines, [], [])
}

_bed := _layer(10, "2", "sheathing", "2026-03-01")

test_whole_finding if {
	_found([_bed, _sheet("3", "2026-05-04"), _layer(15, "6", "cladding", "2026-04-13")]) == {{
		"line": "W!12",
		"cells": ["K12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes on 4 May 2026, after the cladding over it",
			"(layer 6, 13 Apr 2026)",
		]),
		"related": [{"line": "W!15", "cells": ["K15"], "what": "the cladding over it"}],
	}}
}

test_listed_from_the_outside if {
	bed := _layer(10, "5", "sheathing", "2026-03-01")
	cladding := _layer(15, "1", "cladding", "2026-04-13")
	count(_found([bed, _sheet("4", "2026-05-04"), cladding])) == 1
}

test_silent[name] if {
	sheet := _sheet("3", "2026-05-04")
	some name, lines in {
		"the same day": [_bed, sheet, _layer(15, "6", "cladding", "2026-05-04")],
		"after": [_bed, sheet, _layer(15, "6", "cladding", "2026-06-01")],
		"a sheet on the room side": [_bed, _sheet("1", "2026-05-04"), _layer(15, "6", "cladding", "2026-04-13")],
		"no wall known": [sheet, _layer(15, "6", "cladding", "2026-04-13")],
		"insulation": [_bed, sheet, _layer(15, "6", "insulation", "2026-04-13")],
	}
	count(_found(lines)) == 0
}
