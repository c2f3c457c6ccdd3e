package performance.assembly_test

import data.lib.desk_test as desk
import data.performance.assembly

_note(text) := {"text": text, "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}

_sheet(texts) := desk.product("AB-1", 4, {"texts": texts})

_found(product, row, notes, limits) := found if {
	doc := desk.document([desk.row(12, "AB-1", row)], [product], limits)
	found := assembly.findings with input as object.union(doc, {"project": object.union(
		doc.project,
		{"notes": [_note(text) | some text in notes]},
	)})
}

_asked := "4. Air barrier assembly to ASTM E2357, 0.04 cfm/ft2."

_material := _sheet({"air_test": "ASTM E2178"})

_limit := desk.limit("air_lsm2", null, 0.02, {})

test_note_in_full if {
	_found(_material, {}, [_asked], []) == {{
		"at": {"sheet": "Notes", "row": 4, "cell": "A4"},
		"cells": ["A4"],
		"message": concat("", [
			"the notes ask for a tested assembly (\"4. Air barrier assembly to ASTM E2357, 0.04 cfm/ft2.\"), ",
			"but the data shows material tests only (AB-1)",
		]),
		"related": [{"product": "AB-1", "cells": ["I4"], "what": "a material test"}],
	}}
}

test_row_claims if {
	some f in _found(_material, {"texts": {"remark": "Tested assembly by E2357"}}, [], [])
	f.message == concat("", [
		"AB-1 is told of as a tested assembly (\"Tested assembly by E2357\"), ",
		"but its data shows a material test only",
	])
}

test_reverse if {
	some f in _found(_sheet({"report": "E2357 report enclosed"}), {}, [], [_limit])
	f.message == "the project limits the air permeance of materials, but AB-1 shows an assembly test only"
	f.related == [{"line": "W!12", "cells": ["C12"], "what": "uses AB-1"}]
}

test_silent[name] if {
	some name, case in {
		"both shown": {
			"product": _sheet({"air_test": "E2178; E2357"}),
			"row": {},
			"notes": [_asked],
			"limits": [_limit],
		},
		"nobody asks": {"product": _material, "row": {}, "notes": ["Air barrier by E2178."], "limits": []},
		"the choice is left": {
			"product": _material,
			"row": {},
			"notes": ["Show air leakage by E2178 or E2357."],
			"limits": [],
		},
		"nothing is shown": {"product": _sheet({}), "row": {}, "notes": [_asked], "limits": []},
		"told in a row": {
			"product": _sheet({}),
			"row": {"texts": {"remark": "E2357 report enclosed"}},
			"notes": [_asked],
			"limits": [],
		},
		"row denies": {
			"product": _material,
			"row": {"texts": {"remark": "not part of a tested assembly"}},
			"notes": [],
			"limits": [],
		},
		"struck row": {
			"product": _material,
			"row": {"struck": true, "texts": {"remark": "tested assembly"}},
			"notes": [],
			"limits": [],
		},
		"test cell is judged elsewhere": {
			"product": _sheet({"air_test": "ASTM E2357"}),
			"row": {},
			"notes": [],
			"limits": [_limit],
		},
		"no limit": {"product": _sheet({"report": "E2357"}), "row": {}, "notes": [], "limits": []},
		"metal": {
			"product": object.union(_material, {"keys": ["metal"]}),
			"row": {},
			"notes": [_asked],
			"limits": [],
		},
	}
	count(_found(case.product, case.row, case.notes, case.limits)) == 0
}
