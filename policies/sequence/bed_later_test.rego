package sequence.bed_later_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.sequence.bed_later

_board := base.item("material", "GM-1", "glass-mat-gypsum-sheathing", "sheathing", [])

_layer(row, order, day, more) := object.union(
	bench.line_of(row, {"order": order, "group": "W1", "dates": {"install": bench.day(day, day, "")}}),
	more,
)

_sheet(day, more) := _layer(12, "3", day, object.union(_own, more))

_own := {"role": "membrane", "items": [bench.fm_1, base.glass_mat]}

_bed(day, more) := _layer(11, "2", day, object.union({"role": "sheathing", "items": [_board]}, more))

_found(lines) := found if {
	found := bed_later.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([_bed("2026-03-12", {}), _sheet("2026-03-05", {})]) == {{
		"line": "W!12",
		"cells": ["K12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes on 5 Mar 2026, before the GM-1 under it",
			"(layer 2, 12 Mar 2026)",
		]),
		"related": [{"line": "W!11", "cells": ["K11"], "what": "the layer under it"}],
	}}
}

test_silent[name] if {
	sheet := _sheet("2026-03-05", {})
	some name, lines in {
		"the same day": [_bed("2026-03-05", {}), sheet],
		"before": [_bed("2026-03-04", {}), sheet],
		"another assembly": [_bed("2026-03-12", {"group": "W2"}), sheet],
		"not its substrate": [_bed("2026-03-12", {"items": [base.item("material", "X", "plywood", "sheathing", [])]}), sheet],
		"far away": [_bed("2026-03-12", {"order": "7"}), sheet],
		"no layer number": [_bed("2026-03-12", {"order": ""}), sheet],
		"no date": [_bed("2026-03-12", {"dates": {"install": {"state": "missing"}}}), sheet],
		"struck": [_bed("2026-03-12", {"struck": true}), sheet],
	}
	count(_found(lines)) == 0
}
