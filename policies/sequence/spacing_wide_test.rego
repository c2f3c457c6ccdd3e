package sequence.spacing_wide_test

import data.lib.desk_test as desk
import data.sequence.spacing_wide

_apart(mm, text) := object.union(
	desk.figure(mm, text, "in"),
	{"at": {"sheet": "W", "row": 12, "cell": "M12"}},
)

_row(kind, mm, text, remark) := desk.row(12, "LM-1", {
	"figures": {kind: _apart(mm, text)},
	"texts": {"remark": remark},
})

_limit(kind, mm, text) := {
	"kind": kind,
	"min": null,
	"max": mm,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": text,
	"at": {"sheet": "N", "row": 4, "cell": "A4"},
}

_found(row, asked) := found if {
	doc := object.union(desk.document([row], [], []), {"project": {"limits": asked, "notes": []}})
	found := spacing_wide.findings with input as doc
}

test_fires_in_full if {
	asked := [_limit("weep_spacing_mm", 609.6, "Weep vents: 24 in. o.c. at most.")]
	_found(_row("weep_spacing_mm", 812.8, "32 in", "weeps 32 in o.c."), asked) == {{
		"line": "W!12",
		"cells": ["M12"],
		"message": concat(" ", [
			"The weeps of LM-1 (rubberized-asphalt-membrane) are 32 in apart;",
			"the notes ask for at most 24 in",
		]),
		"severity": "error",
		"related": [{"at": asked[0].at, "cells": ["A4"], "what": "Weep vents: 24 in. o.c. at most."}],
	}}
}

test_usual if {
	[f.severity | some f in _found(_row("spacing_mm", 457.2, "18 in", "bar, screws 18 in o.c."), [])] == ["warning"]
	[f.severity | some f in _found(_row("weep_spacing_mm", 1219.2, "48 in", "weeps at 48 in"), [])] == ["warning"]
}

test_silent[name] if {
	bars := [_limit("spacing_mm", 203.2, "Bars fastened 8 in. o.c.")]
	some name, case in {
		"as asked": [_row("spacing_mm", 203.2, "8 in", "bar 8 in o.c."), bars],
		"soft conversion": [_row("spacing_mm", 205, "205 mm", "bar, 205 mm c/c"), bars],
		"no bar": [_row("spacing_mm", 406.4, "16 in", "screws 16 in o.c."), bars],
		"usual weeps": [_row("weep_spacing_mm", 812.8, "32 in", "weeps 32 in o.c."), []],
		"struck": [object.union(_row("spacing_mm", 457.2, "18 in", "bar 18 in o.c."), {"struck": true}), bars],
	}
	count(_found(case[0], case[1])) == 0
}

# Weeps in a row of their own, which names no material; such a row that tells of none is silent.
test_weeps_of_their_own if {
	vents := object.union(_row("weep_spacing_mm", 914.4, "36 in", "cell vents 36 in o.c."), {"items": []})
	told := object.union(vents, {"signals": [{"id": "weeps", "no": false, "text": "cell vents", "slot": "material"}]})
	asked := [_limit("weep_spacing_mm", 609.6, "Weeps 24 in. o.c. max.")]
	[f.message | some f in _found(told, asked)] == ["The weeps are 36 in apart; the notes ask for at most 24 in"]
	count(_found(vents, asked)) == 0
	close := {"figures": {"weep_spacing_mm": _apart(609.6, "24 in")}}
	count(_found(object.union(told, close), asked)) == 0
}
