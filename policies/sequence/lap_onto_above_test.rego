package sequence.lap_onto_above_test

import data.lib.season_bench_test as bench
import data.sequence.lap_onto_above

_upper := object.union(bench.sheet({"mark": "B-02"}), {"id": "W!13", "row": 13})

_found(texts) := found if {
	lower := bench.sheet({"mark": "B-01", "texts": texts})
	found := lap_onto_above.findings with input as bench.document([lower, _upper], [], [])
}

test_fires if {
	{f.message | some f in _found({"top": "AVB1 B-02", "edge": "laps 100 over the face of B-02"})} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps over B-02, which the row says is above it",
		`("laps 100 over the face of B-02")`,
	])}
}

test_silent[name] if {
	some name, texts in {
		"laps under": {"top": "AVB1 B-02", "edge": "laps 100 under the face of B-02"},
		"the upper laps over it": {"top": "AVB1 B-02", "edge": "B-02 laps 100 over its face"},
		"over another": {"top": "AVB1 B-02", "edge": "laps 100 over the face of B-09"},
		"above and below": {"top": "AVB1 B-02", "bottom": "B-02", "edge": "laps over B-02"},
		"nothing above": {"edge": "laps over the face of B-02"},
	}
	count(_found(texts)) == 0
}

_wall := object.union(bench.item_of("touches", "wall sheet", "membrane"), {
	"slot": "edge",
	"relation": "on",
	"side": "object",
	"clause": "flashing run up onto the front of the wall sheet above",
	"signals": ["lies_above"],
	"at": {"sheet": "W", "row": 12, "cell": "J12"},
})

_told(items, signals) := found if {
	lower := bench.sheet({"items": array.concat([bench.own], items), "signals": signals})
	found := lap_onto_above.findings with input as bench.document([lower], [], [])
}

test_told_in_words if {
	{f.message | some f in _told([_wall], [])} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps over the outside of wall sheet above it",
		`("flashing run up onto the front of the wall sheet above")`,
	])}
}

test_leg_over_the_face_of_the_sheet if {
	leg := object.union(_wall, {"clause": "upstand set onto the face of the wall sheet", "signals": []})
	count(_told([leg], [])) == 1
}

test_silent_in_words[name] if {
	bar := object.union(_wall, {"id": "b", "text": "bar", "class": "flashing-metal", "side": "subject"})
	some name, case in {
		"shingled": [[object.union(_wall, {"signals": ["lies_above", "lap_shingled"]})], []],
		"not above": [[object.union(_wall, {"signals": []})], []],
		"behind it": [[object.union(_wall, {"clause": "run up onto the back of the wall sheet above"})], []],
		"a leg under it": [[object.union(_wall, {"clause": "upstand under the wall sheet", "signals": []})], []],
		"the wall itself": [[object.union(_wall, {"class": "substrate"})], []],
		"a bar on it": [[bar, _wall], []],
		"closed in the cell": [[_wall], [bench.signal("edge_sealed", "edge", "bar and bead")]],
		"told by another rule": [[_wall], [bench.signal("lap_reversed", "edge", "reverse lap")]],
	}
	count(_told(case[0], case[1])) == 0
}

_above := object.union(bench.item_of("touches", "AVB-2", "membrane"), {"product": "AVB-2", "signals": ["lies_above"]})

_cells(item, lap) := found if {
	lower := bench.sheet({"items": [bench.own, item], "texts": {"lap": lap}})
	found := lap_onto_above.findings with input as bench.document([lower], [], [])
}

test_told_in_two_cells if {
	{f.message | some f in _cells(_above, "75 sides; head turned up onto the face of AVB-2")} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps over the outside of AVB-2 above it",
		`("75 sides; head turned up onto the face of AVB-2")`,
	])}
}

test_silent_in_two_cells[name] if {
	some name, case in {
		"under it": [_above, "head tucked under AVB-2"],
		"another face": [_above, "turned up on the face of the wall, AVB-2 over"],
		"not above": [object.union(_above, {"signals": []}), "head turned up onto the face of AVB-2"],
	}
	count(_cells(case[0], case[1])) == 0
}

_at_base(id, text, side, clause) := object.union(bench.item_of("touches", text, "membrane"), {
	"id": id,
	"slot": "remark",
	"side": side,
	"relation": "over",
	"clause": clause,
	"at": {"sheet": "W", "row": 12, "cell": "K12"},
})

_over(below, upper, clause) := _told(
	[_at_base("b", below, "subject", clause), _at_base("u", upper, "object", clause)],
	[],
)

test_foundation_sheet_over_the_wall_sheet[clause] if {
	some clause, case in {
		"foundation membrane over wall sheet": ["foundation membrane", "wall sheet", 1],
		"b/g sheet o/ wall sheet": ["b/g sheet", "wall sheet", 1],
		"wall sheet over foundation membrane": ["wall sheet", "foundation membrane", 0],
		"foundation membrane over footing sheet": ["foundation membrane", "footing sheet", 0],
		"foundation membrane over reinforcing strip": ["foundation membrane", "sheet", 0],
		"footing sheet, also above grade, over wall sheet": ["footing sheet, also above grade", "wall sheet", 0],
	}
	count(_over(case[0], case[1], clause)) == case[2]
}

test_told_of_the_foundation_sheet if {
	found := _over("foundation membrane", "wall sheet", "foundation membrane over wall sheet")
	{f.message | some f in found} == {concat(" ", [
		"Foundation membrane laps over wall sheet, which comes down from above it",
		`("foundation membrane over wall sheet")`,
	])}
}

# the fillet of the row's own goes on first, whatever it is at
test_over_the_fillet_of_the_row[name] if {
	some name, case in {"liquid fillet": 0, "corner gusset": 0, "field of wall": 1}
	clause := "foundation membrane over FM-1 when it is firm"
	upper := object.union(_at_base("u", "FM-1", "object", clause), {"product": "FM-1"})
	lower := bench.sheet({
		"items": [bench.own, _at_base("b", "foundation membrane", "subject", clause), upper],
		"texts": {"material": concat(" ", ["FM-1", name])},
	})
	count(lap_onto_above.findings) == case with input as bench.document([lower], [], [])
}

# A cover of a wall's top comes down over both of its faces.
test_silent_where_it_comes_down if {
	over := object.union(_wall, {
		"clause": "75 down over the wall sheet outside and the upstand of the deck inside",
		"signals": [],
	})
	count(_told([over], [])) == 0
}

# The upturned leg of a metal flashing ends behind the sheet; that of a coping comes down over it.
test_leg_of_metal[name] if {
	some name, case in {
		"back leg": {"edge": "back leg bonded on the face of wall sheet", "place": "Shelf angle", "n": 1},
		"coping": {"edge": "back leg bonded on the face of wall sheet", "place": "Coping", "n": 0},
		"leg that goes up": {"edge": "leg carried up on the outer face of wall sheet", "place": "Lintel", "n": 1},
		"leg on another face": {"edge": "leg carried up behind wall sheet", "place": "Lintel", "n": 0},
		"leg that is not turned up": {"edge": "drip leg bonded on the face of wall sheet", "place": "Shelf angle", "n": 0},
	}
	over := object.union(_wall, {"clause": case.edge, "signals": []})
	metal := bench.sheet({
		"role": "metal",
		"place": case.place,
		"items": [bench.own, over],
		"texts": {"edge": case.edge},
	})
	count(lap_onto_above.findings) == case.n with input as bench.document([metal], [], [])
}

# The row of a metal flashing may call its own piece so; another product is another piece.
test_own_flashing_by_its_noun[name] if {
	clause := "flashing upper leg lapped over the face of SH-4"
	over := object.union(_wall, {"slot": "remark", "relation": "over", "clause": clause, "signals": []})
	noun := object.union(over, {
		"id": "n",
		"text": "flashing",
		"family": "flashing-unspecified",
		"class": "flashing-metal",
		"side": "subject",
		"product": "",
	})
	some name, case in {
		"its own": {"noun": noun, "role": "metal", "n": 1},
		"another": {"noun": object.union(noun, {"family": "lead-sheet", "text": "lead"}), "role": "metal", "n": 0},
		"of a sheet": {"noun": noun, "role": "membrane", "n": 0},
	}
	row := bench.sheet({"role": case.role, "items": [bench.own, case.noun, over], "texts": {"remark": clause}})
	found := lap_onto_above.findings with input as bench.document([row], [], [])
	count(found) == case.n
}

# The sheet of a storey, by its number.
test_levels[name] if {
	some name, case in {
		"lower over upper": {"edge": "Level 3 head carried over the face of level 4 sheet", "n": 1},
		"by lifts": {"edge": "lift 2 stuck 4 in. onto lift 3", "n": 1},
		"upper behind lower": {"edge": "foot of L5 tucked behind L4 membrane", "n": 1},
		"upper over lower": {"edge": "L4 laps over L3 sheet", "n": 0},
		"lower behind upper": {"edge": "L3 head tucked behind L4 sheet", "n": 0},
		"passive": {"edge": "L3 to be lapped over by L4", "n": 0},
		"over a slab": {"edge": "L3 sheet runs over the slab edge at L4", "n": 0},
		"two clauses": {"edge": "L3 first, then lapped over L4", "n": 0},
		"one level": {"edge": "L3 laps over sill", "n": 0},
	}
	count(_found({"edge": case.edge})) == case.n
}
