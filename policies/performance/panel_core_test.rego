package performance.panel_core_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.performance.panel_core

_at := {"sheet": "N", "row": 4, "cell": "B4"}

_fr := {"text": "All composite panels: FR core", "at": _at}

_high_only := {"text": "Cladding above 40 ft: mineral core", "at": _at}

_found(material, place, notes) := found if {
	panel := base.item("material", material, "painted-aluminum", "flashing-metal", [])
	row := bench.line_of(12, {
		"role": "metal",
		"items": [panel],
		"texts": {"material": material, "place": place},
		"cells": {"material": "C12", "place": "F12"},
	})
	doc := object.union(bench.document([row], [], []), {"project": {"notes": notes}})
	found := panel_core.findings with input as doc
}

test_fires_in_full if {
	_found("ACM panel, LDPE core", "west", [_fr]) == {{
		"line": "W!12",
		"cells": ["C12"],
		"message": concat("", [
			"ACM panel, LDPE core has a core of plain polyethylene; ",
			"the notes ask for one that resists fire (\"All composite panels: FR core\")",
		]),
		"related": [{"at": _at, "cells": ["B4"], "what": "\"All composite panels: FR core\""}],
	}}
}

test_high_without_a_note if {
	found := _found("Metal composite panel, PE core", "west, +46 ft to +60 ft", [])
	{[f.severity, f.cells] | some f in found} == {["warning", ["C12", "F12"]]}
	count(_found("Metal composite panel, PE core", "west, +15 m", [_high_only])) == 1
}

test_silent[name] if {
	some name, case in {
		"fire-retardant core": ["ACM panel, FR core", "west", [_fr]],
		"core is not told": ["ACM panel, 4 mm", "west", [_fr]],
		"no such core": ["ACM panel, no PE core", "west", [_fr]],
		"mock-up": ["ACM panel, PE core", "shop mock-up", [_fr]],
		"no note and low": ["ACM panel, PE core", "entry, 12 ft", []],
		"no note and no height": ["ACM panel, PE core", "west", []],
		"note is for what hangs high": ["ACM panel, PE core", "entry, 12 ft", [_high_only]],
		"note asks for something else": ["ACM panel, PE core", "west", [{"text": "Panels: PVDF", "at": _at}]],
		"no panel": ["Backer rod, PE core", "west", [_fr]],
	}
	count(_found(case[0], case[1], case[2])) == 0
}

_tested := {"text": "Combustible cladding: NFPA 285 report for the wall as built", "at": _at}

test_a_fire_test_is_asked_for if {
	{f.message | some f in _found("Aluminum skins on LDPE core, 4 mm", "west", [_tested])} == {concat("", [
		"Aluminum skins on LDPE core, 4 mm has a core of plain polyethylene; the notes ask for a fire test ",
		"of the wall (\"Combustible cladding: NFPA 285 report for the wall as built\")",
	])}
	count(_found("Zinc cassettes, PE core, NFPA 285 not done", "west", [_tested])) == 1
}

test_a_fire_test_is_there[material] if {
	some material in [
		"Aluminum skins on LDPE core, NFPA 285 report no. 7",
		"Aluminum skins on mineral core, 4 mm",
		"Aluminum skins on honeycomb",
	]
	count(_found(material, "west", [_tested])) == 0
}
