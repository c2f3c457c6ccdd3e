package performance.flame_spread_test

import data.lib.desk_test as desk
import data.performance.flame_spread

_at := {"sheet": "Notes", "row": 4, "cell": "A4"}

_found(note, texts, product) := found if {
	own := object.union(desk.own(12, "FL-2"), {"product": "FL-2"})
	row := desk.row(12, "FL-2", {"group": "W4", "texts": texts, "items": [own]})
	data_of := desk.product("FL-2", 15, {"texts": product})
	doc := desk.document([row], [data_of], [])
	project := object.union(doc.project, {"notes": [{"text": note, "at": _at}]})
	found := flame_spread.findings with input as object.union(doc, {"project": project})
}

_note := "Membranes: flame spread index 25, smoke developed 450 at most (ASTM E84)."

test_fires_in_full if {
	_found(_note, {"remark": "other sheet, FSI 60 by E84"}, {}) == {{
		"line": "W!12",
		"cells": ["M12"],
		"message": concat(" ", [
			"FL-2 (rubberized-asphalt-membrane) has a flame spread index of 60",
			`("other sheet, FSI 60 by E84"); the notes allow 25`,
		]),
		"related": [{"at": _at, "cells": ["A4"], "what": `"Membranes: flame spread index 25, smoke developed 450 at …"`}],
	}}
}

test_fires_however_told[remark] if {
	some remark in [
		"flame spread 40",
		"E84: 75/300",
		"flame/smoke 30/200",
		"75/450 per ASTM E84",
		"class C flame spread",
		"FS 20, smoke 500",
	]
	count(_found(_note, {"remark": remark}, {})) == 1
}

test_fires_however_asked[note] if {
	some note in [
		"4. WRB flame spread (ASTM E84) 25 max.",
		"All sheets class A by ASTM E84.",
		"Flame spread and smoke developed indexes 25 and 450 maximum.",
		"W4 and W5: barriers flame spread 25.",
	]
	count(_found(note, {"remark": "FSI 60"}, {})) == 1
}

test_data_of_the_product if {
	{[f.product, f.message] | some f in _found(_note, {}, {"remark": "flame/smoke 35/120"})} == {[
		"FL-2",
		"FL-2 has a flame spread index of 35; the notes allow 25",
	]}
}

test_silent[name] if {
	some name, case in {
		"on the limit": {"note": _note, "texts": {"remark": "FS 25 / smoke 450 E84"}, "product": {}},
		"under": {"note": _note, "texts": {"remark": "flame/smoke 10/90"}, "product": {"remark": "E84: 5/40"}},
		"class A": {"note": _note, "texts": {"remark": "class A flame spread"}, "product": {}},
		"what is asked for": {"note": _note, "texts": {"remark": "FSI 75 max allowed for foam"}, "product": {}},
		"of the boards": {"note": _note, "texts": {"remark": "XPS flame spread 60"}, "product": {}},
		"asked of foam": {"note": "Foam plastic: flame spread 25", "texts": {"remark": "FSI 60"}, "product": {}},
		"asked of another wall": {"note": "W5: barriers flame spread 25", "texts": {"remark": "FSI 60"}, "product": {}},
		"nothing asked": {"note": "Sheets per NFPA 285.", "texts": {"remark": "FSI 60"}, "product": {}},
		"the test's own figure": {"note": _note, "texts": {"remark": "flame spread by E84 on file"}, "product": {}},
		"a vapor class": {"note": _note, "texts": {"remark": "class C joint"}, "product": {}},
	}
	count(_found(case.note, case.texts, case.product)) == 0
}

# The cell of the tag, or of what is next to it, may tell it as well.
test_told_beside_the_tag[slot] if {
	some slot in ["tag", "touches"]
	count(_found(_note, {slot: "FL-2 sheet, FSI 60 / SDI 300"}, {})) == 1
	count(_found(_note, {slot: "FL-2 sheet, FSI 20 / SDI 300"}, {})) == 0
}

# A column of thickness and ratings may tell it; a thickness alone is no flame spread.
test_told_with_the_thickness if {
	count(_found(_note, {"thickness": "1 mm, FSI 60"}, {})) == 1
	count(_found(_note, {"thickness": "1 mm, FSI 20"}, {})) == 0
	count(_found(_note, {"thickness": "60 mil"}, {})) == 0
}
