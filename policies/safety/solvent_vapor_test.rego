package safety.solvent_vapor_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.safety.solvent_vapor

_row(n, one, more) := object.union(desk.row(n, "FM-1", {"items": [desk.named(n, one, "")]}), more)

_found(rows) := found if {
	found := solvent_vapor.findings with input as desk.document(rows, [], [])
}

test_once_in_full if {
	_found([_row(12, bench.solvent_primer, {}), _row(14, bench.solvent_primer, {})]) == {{
		"line": "W!12",
		"cells": ["F12"],
		"message": concat("", [
			"P-1 is solvent-borne and its vapor burns and gathers in closed places; ",
			"ventilate, no open flame",
		]),
	}}
}

test_heated_row_first if {
	heated := _row(14, bench.solvent_primer, {"signals": [desk.said(14, "heated", "shelter")]})
	found := _found([_row(12, bench.solvent_primer, {}), heated])
	{[f.line, contains(f.message, "this row is heated or enclosed")] | some f in found} == {["W!14", true]}
}

test_silent[name] if {
	some name, rows in {
		"water-borne": [_row(12, bench.water_primer, {})],
		"struck": [_row(12, bench.solvent_primer, {"struck": true})],
		"not there": [_row(12, object.union(bench.solvent_primer, {"polarity": "no"}), {})],
		"no rows": [],
	}
	count(_found(rows)) == 0
}
