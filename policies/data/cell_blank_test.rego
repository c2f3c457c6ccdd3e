package data.cell_blank_test

import data.data.cell_blank
import data.lib.bench_test as bench
import data.lib.desk_test as desk

_demand := desk.limit("filled_cells", null, null, {"text": "fill in every cell D to J", "roles": ["membrane"]})

_filled := {slot: "x" | some slot in [
	"material",
	"thickness",
	"substrate",
	"primer",
	"touches",
	"sealant",
	"remark",
	"behind",
	"cover",
	"mark",
	"place",
	"tag",
	"air",
	"min_thickness",
	"install",
]}

_found(texts, more, limits) := found if {
	row := object.union(desk.row(12, "FL-2", {"texts": object.union(_filled, texts)}), more)
	found := cell_blank.findings with input as desk.document([row], [], limits)
}

test_fires_in_full if {
	_found({"substrate": "", "thickness": " "}, {}, [_demand]) == {{
		"line": "W!12",
		"cells": ["D12", "E12"],
		"message": "substrate and thickness: the notes ask for it, and the cell is empty",
		"related": [{"at": _demand.at, "cells": ["A3"], "what": "fill in every cell D to J"}],
	}}
}

test_note_without_columns if {
	loose := object.union(_demand, {"text": "every cell is to be filled"})
	{f.cells | some f in _found({"substrate": "", "touches": ""}, {}, [loose])} == {["E12"]}
}

test_silent[name] if {
	some name, case in {
		"no demand": {"texts": {"substrate": ""}, "more": {}, "limits": []},
		"dash": {"texts": {"substrate": "-"}, "more": {}, "limits": [_demand]},
		"outside the columns": {"texts": {"behind": "", "place": ""}, "more": {}, "limits": [_demand]},
		"install has its own rule": {"texts": {"install": ""}, "more": {}, "limits": [_demand]},
		"other role": {"texts": {"substrate": ""}, "more": {"role": "insulation"}, "limits": [_demand]},
		"struck": {"texts": {"substrate": ""}, "more": {"struck": true}, "limits": [_demand]},
	}
	count(_found(case.texts, case.more, case.limits)) == 0
}

test_primer_that_is_needed_is_told_elsewhere if {
	items := [desk.own(12, "FL-2"), bench.block]
	count(_found({"primer": ""}, {"items": items}, [_demand])) == 0
}
