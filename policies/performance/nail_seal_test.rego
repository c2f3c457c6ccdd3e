package performance.nail_seal_test

import data.lib.desk_test as desk
import data.performance.nail_seal

_note(text) := {"text": text, "at": {"sheet": "Notes", "row": 4, "cell": "A4"}}

_other := desk.product("AB-2", 5, {"texts": {"report": "E2178; D1970 nail seal pass"}})

_ask := "Sheets at veneer ties shall pass nail sealability by ASTM D1970."

_ties := {"texts": {"touches": "brick ties 16 in o.c."}}

_found(texts, row, notes, others) := found if {
	products := array.concat([desk.product("AB-1", 4, {"texts": texts})], others)
	doc := desk.document([desk.row(12, "AB-1", row)], products, [])
	found := nail_seal.findings with input as object.union(doc, {"project": object.union(
		doc.project,
		{"notes": [_note(text) | some text in notes]},
	)})
}

test_fires_in_full if {
	_found({"air_test": "nail sealability D1970: fail"}, _ties, [], []) == {{
		"product": "AB-1",
		"cells": ["I4"],
		"severity": "error",
		"message": concat("", [
			"fasteners go through AB-1 in 1 row, but its data says ",
			"\"nail sealability D1970: fail\"",
		]),
		"related": [{"line": "W!12", "cells": ["C12"], "what": "uses AB-1"}],
	}}
}

test_notes_ask if {
	some f in _found({}, {}, [_ask], [_other])
	f.severity == "warning"
	f.message == concat("", [
		"the notes ask for a seal around fasteners at AB-1, ",
		"but its data tells of no such test, and that of others does",
	])
	f.related[1] == {"at": _note("").at, "cells": ["A4"], "what": _ask}
}

test_ties_without_a_test_are_a_question if desk.levels(_found({}, _ties, [], [_other])) == {"note"}

test_silent[name] if {
	some name, case in {
		"passes": {"texts": {"report": "D1970 pass"}, "row": _ties, "notes": [_ask], "others": [_other]},
		"no data tells of it": {"texts": {}, "row": _ties, "notes": [_ask], "others": []},
		"nobody asks": {"texts": {}, "row": {}, "notes": ["Sheets 40 mil."], "others": [_other]},
		"waived": {"texts": {}, "row": {}, "notes": ["D1970 nail test not required."], "others": [_other]},
		"fails and nothing goes through": {
			"texts": {"report": "fails nail seal"},
			"row": {},
			"notes": [],
			"others": [],
		},
		"gasketed": {
			"texts": {},
			"row": {"texts": {"touches": "brick ties with gasketed washers"}},
			"notes": [],
			"others": [_other],
		},
		"struck": {
			"texts": {"report": "fails nail seal"},
			"row": object.union(_ties, {"struck": true}),
			"notes": [],
			"others": [],
		},
	}
	count(_found(case.texts, case.row, case.notes, case.others)) == 0
}
