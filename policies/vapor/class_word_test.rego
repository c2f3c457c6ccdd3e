package vapor.class_word_test

import data.lib.desk_test as desk
import data.vapor.class_word

_found(words, ng, text, more) := found if {
	figures := {"vapor_ng": desk.figure(ng, text, "perm")}
	product := object.union(desk.product("V-1", 5, {"texts": {"material": words}, "figures": figures}), more)
	found := class_word.findings with input as desk.document([], [product], [])
}

test_fires_in_full if {
	_found("Self-adhered vapor-permeable sheet", 28.6, "0.5", {}) == {{
		"product": "V-1",
		"cells": ["B5", "C5", "J5"],
		"message": "V-1 is called vapor-permeable, but its vapor permeance of 0.5 perm is that of a vapor retarder",
	}}
}

test_barrier_that_is_none if {
	some f in _found("air/vapour barrier sheet", 915, "16", {})
	f.message == "V-1 is called a vapor barrier, but its vapor permeance of 16 perm is that of a vapor-open sheet"
}

test_silent[name] if {
	some name, case in {
		"open and open": {"words": "vapor-permeable sheet", "ng": 1030, "more": {}},
		"class III": {"words": "vapor-permeable sheet", "ng": 300, "more": {}},
		"just above class II": {"words": "vapor-permeable sheet", "ng": 57.6, "more": {}},
		"tight and tight": {"words": "vapor barrier", "ng": 2.86, "more": {}},
		"not permeable": {"words": "non-vapor-permeable sheet", "ng": 2.86, "more": {}},
		"no word": {"words": "self-adhered sheet", "ng": 2.86, "more": {}},
		"insulation": {"words": "vapor-permeable board", "ng": 2.86, "more": {"role": "insulation"}},
	}
	count(_found(case.words, case.ng, "x", case.more)) == 0
}

test_missing if {
	product := desk.product("V-1", 5, {"texts": {"material": "vapor-permeable sheet"}})
	count(class_word.findings) == 0 with input as desk.document([], [product], [])
}

# A row that counts on an open sheet for the barrier of the wall.
_counted(words, ng) := found if {
	product := desk.product("V-1", 5, {"figures": {"vapor_ng": desk.figure(ng, "18 perm", "perm")}})
	row := desk.row(12, "V-1", {"role": "membrane", "texts": {"remark": words}})
	found := class_word.findings with input as desk.document([row], [product], [])
}

test_counted_for_a_barrier if {
	some f in _counted("Doubles as the vapor retarder", 1030)
	f.severity == "warning"
	endswith(f.message, concat(" ", [
		`is counted on for a vapor barrier ("Doubles as the vapor retarder"),`,
		"but its vapor permeance of 18 perm is that of a vapor-open sheet",
	]))
}

test_not_counted_for_one if {
	count(_counted("Doubles as the vapor retarder", 2.9)) == 0
	count(_counted("No vapor barrier at this wall", 1030)) == 0
	count(_counted("Poly film inside serves as the vapor barrier", 1030)) == 0
	count(_counted("Rolled twice", 1030)) == 0
}

# A class beside a permeance is that of a barrier; of flame, or of a layer inside, it is none.
test_class_beside_the_permeance if {
	count(_counted("Class II, 18 perm", 1030)) == 1
	count(_counted("class I by E96", 1030)) == 1
	count(_counted("Class II, 0.5 perm", 28)) == 0
	count(_counted("Class III, 18 perm", 1030)) == 0
	count(_counted("Flame spread class I", 1030)) == 0
	count(_counted("Paint inside is class II, 0.9 perm", 1030)) == 0
}

# The figure may be that of the row.
test_class_beside_the_figure_of_the_row if {
	row := desk.row(12, "V-1", {
		"role": "membrane",
		"texts": {"remark": "class I, 12 perm"},
		"figures": {"vapor_ng": desk.figure(690, "12 perm", "perm")},
	})
	found := class_word.findings with input as desk.document([row], [desk.product("V-1", 5, {})], [])
	count(found) == 1
}

# A class of the code beside a figure of another class.
_stated(text, ng) := found if {
	product := desk.product("V-1", 5, {
		"texts": {"material": "self-adhered sheet", "vapor": text},
		"figures": {"vapor_ng": desk.figure(ng, text, "perm")},
	})
	found := {f.message | some f in class_word.findings} with input as desk.document([], [product], [])
}

test_class_beside_its_figure if {
	_stated("Class 2 - 18 perm", 1030) == {concat("", [
		"V-1 is called class II beside its vapor permeance (\"Class 2 - 18 perm\"), ",
		"which is that of a vapor-open sheet",
	])}
	count(_stated("0.06 perm (class II)", 3.4)) == 1
	count(_stated("class III by wet cup, 0.05", 2.9)) == 1
}

test_class_beside_its_figure_silent[text] if {
	some text, ng in {
		"Class I, 0.1 perm": 5.72,
		"0.4 perm, Class II": 22.9,
		"16 perm, class III": 915,
		"0.3 perm (E96 B), Class I": 17.2,
		"Class I or II, 0.4 perm": 22.9,
		"0.05 perm, class A flame": 2.9,
	}
	count(_stated(text, ng)) == 0
}
