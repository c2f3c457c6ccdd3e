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

_wool(day, slot, text) := bench.line_of(12, {
	"mark": "D-4",
	"texts": {slot: text},
	"cells": {"install": "K12", slot: "E12"},
	"dates": {"install": bench.day(day, day, "")},
})

test_named_in_other_words[text] if {
	some [slot, text, says] in [
		["touches", "Over wall sheet D-3", "lies over"],
		["touches", "Stick pins. Laid over the field sheet (D-3)", "lies over"],
		["remark", "Follows D-3", "follows"],
		["touches", "After item D-3, two crews", "follows"],
		["substrate", "SBS sheet (D-3)", "stands on"],
	]
	found := _found([_pan("2026-06-09"), _wool("2026-06-03", slot, text)])
	message := sprintf("this is set on 3 Jun 2026, before D-3 that it %s (9 Jun 2026)", [says])
	{[f.cells, f.message] | some f in found} == {[["E12", "K12"], message]}
}

test_silent_in_other_words[text] if {
	some [slot, text] in [
		["touches", "3 in. over D-3"],
		["touches", "left loose; over D-3, which slips under"],
		["touches", "D-3 laps over the upstand"],
		["touches", "Over wall sheet SH-1"],
		["remark", "Before D-3"],
		["substrate", "SBS sheet, D-3"],
	]
	count(_found([_pan("2026-06-09"), _wool("2026-06-03", slot, text)])) == 0
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

# The work may be named by what it is and whose it is; a lap onto a later sheet that slips under is another thing.
test_named_by_what_it_is[text] if {
	some [slot, text, many] in [
		["remark", "Pan sits on the fluid coat of D-3.", 1],
		["touches", "bonded to the wall, stuck onto the AB-2 primer strip of item D-3", 1],
		["remark", "Rests on the sheet of D-3, which slips under", 0],
		["remark", "Sits on the shelf angle of the frame, color as D-3", 0],
	]
	count(_found([_pan("2026-06-09"), _wool("2026-06-03", slot, text)])) == many
}

# A figure with a measure names no row, though one has that number.
test_measure_is_no_mark[text] if {
	some text, many in {
		"block over 14 d": 0,
		"Mas. over 14 days": 0,
		"over 14 mm board": 0,
		"over sheet 14": 1,
		"over 14 and 15": 1,
	}
	pan := object.union(_pan("2026-06-09"), {"mark": "14"})
	count(_found([pan, _wool("2026-06-03", "remark", text)])) == many
}
