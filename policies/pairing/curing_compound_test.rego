package pairing.curing_compound_test

import data.lib.bench_test as bench
import data.pairing.curing_compound

_found(more, extra) := found if {
	doc := object.union(bench.schedule([bench.sbs, bench.concrete], more, []), extra)
	found := curing_compound.findings with input as doc
}

_says(text) := bench.said("curing_compound", text)

_pour(signals) := {
	"name": "Pour 9",
	"placed": {"state": "day"},
	"signals": signals,
	"at": {"sheet": "Pours", "row": 10, "cell": "A10"},
}

_from_pours := {"dates": {"placed": {"state": "day", "at": {"sheet": "Pours", "row": 10, "cell": "B10"}}}}

test_fires if {
	_found({"signals": [_says("wax-base cure"), bench.said("left_on", "left on")]}, {}) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"severity": "error",
		"message": `FM-1 (rubberized-asphalt-membrane) goes on concrete whose curing compound stays on ("wax-base cure")`,
		"related": [],
	}}
}

test_nothing_said_of_it_coming_off if {
	found := _found({"signals": [_says("cured with compound")]}, {})
	{[f.severity, f.message] | some f in found} == {["warning", concat("", [
		"FM-1 (rubberized-asphalt-membrane) goes on concrete with a curing compound ",
		`("cured with compound"), not said to come off`,
	])]}
}

test_how_loud[text] if {
	some text, severity in {
		"wax emulsion": "error",
		"white pigmented compound": "error",
		"dissipating resin": "note",
		"curing compound": "warning",
	}
	{f.severity | some f in _found({"signals": [_says(text)]}, {})} == {severity}
}

test_project_bars_them_all if {
	limit := {"kind": "no_curing_compound", "min": null, "max": null}
	extra := {"project": {"limits": [limit], "signals": []}}
	{f.severity | some f in _found({"signals": [_says("curing compound")]}, extra)} == {"error"}
}

test_told_on_the_sheet_of_pours if {
	said := object.union(_says("wax emulsion, not cleaned"), {"at": {"sheet": "Pours", "row": 10, "cell": "D10"}})
	some f in _found(_from_pours, {"pours": [_pour([said, bench.said("left_on", "not cleaned")])]})
	f.severity == "error"
	f.related == [{
		"at": {"sheet": "Pours", "row": 10, "cell": "D10"},
		"cells": ["D10"],
		"what": "wax emulsion, not cleaned",
	}]
}

test_pour_named_in_the_substrate if {
	more := {"texts": {"substrate": "concrete curb, Pour 9"}}
	count(_found(more, {"pours": [_pour([_says("wax")])]})) == 1
}

test_silent[name] if {
	some name, case in {
		"ground off": {
			"more": {"signals": [_says("dissipating resin"), bench.said("removed", "ground off")]},
			"extra": {},
		},
		"wall stays, cure ground off": {
			"more": {"signals": [
				_says("resin cure"),
				bench.said("removed", "ground off"),
				object.union(bench.said("left_on", "existing wall to remain"), {"at": {"sheet": "W", "row": 12, "cell": "B12"}}),
			]},
			"extra": {},
		},
		"denied": {"more": {"signals": [object.union(_says("no curing compound"), {"no": true})]}, "extra": {}},
		"water cured": {"more": {}, "extra": {}},
		"another pour": {
			"more": {"texts": {"substrate": "concrete curb, Pour 90"}},
			"extra": {"pours": [_pour([_says("wax")])]},
		},
		"washed off in the pour log": {
			"more": _from_pours,
			"extra": {"pours": [_pour([_says("resin"), bench.said("removed", "washed off")])]},
		},
		"insulation": {"more": {"role": "insulation", "signals": [_says("wax")]}, "extra": {}},
	}
	count(_found(case.more, case.extra)) == 0
}
