package contact.no_letter_test

import data.contact.no_letter
import data.lib.bench_test as bench

_bead := object.union(
	bench.end("sealant", "S-5", "acrylic-latex-sealant", "sealant", ["acrylic", "water-borne"]),
	{"product": "S-5"},
)

_sheet := object.union(bench.sheet, {"product": "FM-1"})

_letter(products, others) := {
	"products": products,
	"with": [bench.target(id, [], [id]) | some id in others],
	"text": "a pair",
	"at": {"sheet": "N", "row": 3, "cell": "A3"},
}

_list := [_letter(["S-5"], ["FM-2"]), _letter(["S-6"], ["FM-1"])]

_found(contact, letters, signals) := found if {
	doc := object.union(
		bench.document([contact], [bench.product("FM-1", {}), bench.product("S-5", {})]),
		{"project": {"limits": [], "signals": signals, "letters": letters}},
	)
	found := no_letter.findings with input as doc
		with data.knowledge.pairs as bench.pairs([])
		with data.knowledge.separators as []
}

_only := [{"id": "letters_only", "no": false}]

test_fires_in_full if {
	_found(bench.contact(_sheet, _bead, {"from": "sealant"}), _list, _only) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "warning",
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) meets S-5 (acrylic-latex-sealant), ",
			"and the letters that the notes list do not name the two together",
		]),
		"related": [],
		"facts": ["FM-1-S-5"],
	}}
}

test_silent[name] if {
	some name, case in {
		"a letter names both": {"letters": array.concat(_list, [_letter(["S-5"], ["FM-1"])])},
		"notes bar nothing": {"signals": []},
		"sealant not in the list": {"letters": [_letter(["S-6"], ["FM-1"])]},
		"sheet not in the list": {"letters": [_letter(["S-5"], ["FM-2"])]},
		"told by a remark": {"more": {"from": "remark"}},
		"apart": {"more": {"kind": "near"}},
	}
	contact := bench.contact(_sheet, _bead, object.union({"from": "sealant"}, object.get(case, "more", {})))
	count(_found(contact, object.get(case, "letters", _list), object.get(case, "signals", _only))) == 0
}

# A letter for the very pair settles what the table of pairs would tell.
test_letter_settles_the_pair[letters] if {
	some letters, n in {"both": 0, "another": 1}
	list := {"both": [_letter(["S-5"], ["FM-1"])], "another": [_letter(["S-5"], ["FM-2"])]}[letters]
	solvent := object.union(
		bench.end("sealant", "S-5", "butyl-sealant", "sealant", ["butyl", "solvent-borne"]),
		{"product": "S-5"},
	)
	doc := object.union(
		bench.document([bench.contact(_sheet, solvent, {})], [bench.product("FM-1", {}), bench.product("S-5", {})]),
		{"project": {"limits": [], "signals": [], "letters": list}},
	)
	count(data.contact.solvent.findings) == n with input as doc
		with data.knowledge.pairs as bench.pairs([])
		with data.knowledge.separators as []
}
