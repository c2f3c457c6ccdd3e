package sequence.named_bed_later_test

import data.lib.season_bench_test as bench
import data.sequence.named_bed_later

_row(row, mark, day, remark) := bench.line_of(row, {
	"mark": mark,
	"texts": {"remark": remark},
	"dates": {"install": bench.day(day, day, "")},
})

_door(day, remark) := _row(12, "D-4", day, remark)

_pan(day) := _row(11, "D-3", day, "ends soldered")

_found(lines) := found if {
	found := named_bed_later.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([_pan("2026-06-09"), _door("2026-06-03", "Sits on the threshold pan of item D-3.")]) == {{
		"line": "W!12",
		"cells": ["K12", "M12"],
		"message": "this is set on 3 Jun 2026, before D-3 that it stands on (9 Jun 2026)",
		"related": [{"line": "W!11", "cells": ["K11"], "what": "what it stands on"}],
	}}
}

test_silent[name] if {
	some name, lines in {
		"the same day": [_pan("2026-06-03"), _door("2026-06-03", "Sits on the pan of item D-3")],
		"after it": [_pan("2026-06-02"), _door("2026-06-03", "Sits on the pan of item D-3")],
		"names it for something else": [_pan("2026-06-09"), _door("2026-06-03", "Color as item D-3")],
		"names no row": [_pan("2026-06-09"), _door("2026-06-03", "Sits on the pan of item D-9")],
		"no date": [bench.line_of(11, {"mark": "D-3"}), _door("2026-06-03", "Sits on the pan of item D-3")],
		"two rows of the mark": [
			_pan("2026-06-09"),
			_row(10, "D-3", "2026-06-01", ""),
			_door("2026-06-03", "Sits on the pan of item D-3"),
		],
	}
	count(_found(lines)) == 0
}
