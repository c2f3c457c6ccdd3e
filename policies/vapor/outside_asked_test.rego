package vapor.outside_asked_test

import data.lib.desk_test as desk
import data.vapor.outside_asked

_note(text) := {"text": text, "at": {"sheet": "N", "row": 7, "cell": "B7"}}

_ask := _note("EW-2 (batts in studs, painted inside): c.i. min R-10")

_wool(n, more) := desk.row(n, "", object.union(
	{
		"group": "EW-2",
		"place": sprintf("bay %d", [n]),
		"items": [object.union(desk.own(n, ""), {"text": "wool board", "class": "insulation", "family": "mineral-wool"})],
		"texts": {"touches": "R-6.3"},
	},
	more,
))

_found(lines, note) := found if {
	doc := desk.document(lines, [], [])
	found := outside_asked.findings with input as object.union(doc, {"project": {"notes": [note]}})
}

test_whole_finding if {
	some found in _found([_wool(12, {})], _ask)
	"G12" in found.cells
	endswith(found.message, " has R-6.3; the notes ask for R-10 outside in EW-2")
	found.related[0].what == "\"EW-2 (batts in studs, painted inside): c.i. min R-10\""
}

test_by_the_note[name] if {
	some name, n in {
		"EW-1, EW-2 continuous insulation ≥R-8": 1,
		"EW-2: R-7.5 or more outboard": 1,
		"EW-2: outboard R-6.3 or better": 0,
		"EW-3: R-10 or more outboard": 0,
		"EW-2: R-10 or more": 0,
		"EW-2: at least R-5 outboard; EW-3: at least R-10 outboard": 0,
	}
	count(_found([_wool(12, {})], _note(name))) == n
}

test_silent[name] if {
	some name, lines in {
		"enough": [_wool(12, {"texts": {"touches": "R-10"}})],
		"by the inch": [_wool(12, {"texts": {"touches": "R-4 per in."}})],
		"of the batts": [_wool(12, {"texts": {"touches": "R-9 batts in studs"}})],
		"two figures": [_wool(12, {"texts": {"touches": "R-6.3", "remark": "R-8 at corners"}})],
		"another wall": [_wool(12, {"group": "EW-3"})],
		"two layers": [_wool(12, {"place": "bay"}), _wool(13, {"place": "bay"})],
		"struck": [_wool(12, {"struck": true})],
	}
	count(_found(lines, _ask)) == 0
}
