package performance.voc_limit_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.performance.voc_limit

_note := desk.limit("voc_gl", null, 250, {"roles": ["primer"], "text": "primers 250 g/L max."})

_found(value, more, limits) := found if {
	figures := {"voc_gl": desk.figure(value, sprintf("%v", [value]), "g/L")}
	primer := desk.product("PR-4", 15, {"role": "primer", "figures": figures})
	item := desk.named(12, bench.butyl_primer, "PR-4")
	row := object.union(desk.row(12, "FL-2", {"items": [desk.own(12, "FL-2"), item]}), more)
	found := voc_limit.findings with input as desk.document([row], [primer], limits)
}

test_fires_in_full if {
	_found(420, {}, [_note]) == {{
		"product": "PR-4",
		"cells": ["K15"],
		"message": "PR-4 has 420 g/L VOC; the notes allow 250 g/L",
		"related": [
			{"line": "W!12", "cells": ["F12"], "what": "uses P-4"},
			{"at": _note.at, "cells": ["A3"], "what": "primers 250 g/L max."},
		],
	}}
}

# The row is of the product itself, and no other row uses it.
test_one_row_of_it if {
	figures := {"voc_gl": desk.figure(310, "310", "g/L")}
	product := desk.product("FL-2", 15, {"role": "sealant", "figures": figures})
	limit := object.union(_note, {"roles": ["sealant"]})
	rows := [desk.row(n, "FL-2", {"items": [desk.named(n, desk.own(n, "FL-2"), "FL-2")]}) | some n in [12, 13]]
	one := voc_limit.findings with input as desk.document([rows[0]], [product], [limit])
	{[f.line, f.message] | some f in one} == {["W!12", "FL-2 has 310 g/L VOC; the notes allow 250 g/L"]}
	two := voc_limit.findings with input as desk.document(rows, [product], [limit])
	{f.product | some f in two} == {"FL-2"}
}

test_silent[name] if {
	some name, case in {
		"at the limit": {"value": 250, "more": {}, "limits": [_note]},
		"under": {"value": 40, "more": {}, "limits": [_note]},
		"limit is for sealants": {"value": 420, "more": {}, "limits": [object.union(_note, {"roles": ["sealant"]})]},
		"no limit": {"value": 420, "more": {}, "limits": []},
		"struck": {"value": 420, "more": {"struck": true}, "limits": [_note]},
		"said not to be there": {
			"value": 420,
			"more": {"items": [desk.named(12, object.union(bench.butyl_primer, {"polarity": "no"}), "PR-4")]},
			"limits": [_note],
		},
	}
	count(_found(case.value, case.more, case.limits)) == 0
}

test_room_side_is_indoors[name] if {
	inside := object.union(_note, {"when": ["indoors"], "text": "indoors 250 g/L max."})
	some name, more in {
		"place": {"place": "Slab edge, warm side"},
		"substrate": {"texts": {"substrate": "CMU, room-side face"}},
		"section": {"group": "INNER SIDE"},
	}
	count(_found(420, more, [inside])) == 1
}

test_room_side_reached_from_outside[name] if {
	inside := object.union(_note, {"when": ["indoors"], "text": "indoors 250 g/L max."})
	warm := {"place": "Deck edge (room side)"}
	told := {"id": "from_outside", "no": false, "text": "from the lift", "slot": "remark", "at": _note.at}
	some name, more in {
		"told": {"signals": [told]},
		"in frost": {"figures": {"reading_air_c": desk.figure(-4, "-4", "°C")}},
	}
	count(_found(420, object.union(warm, more), [inside])) == 0
	count(_found(420, object.union(warm, {"figures": {"reading_air_c": desk.figure(4, "4", "°C")}}), [inside])) == 1
}

test_limit_for_work_indoors if {
	inside := object.union(_note, {"when": ["indoors"], "text": "indoors 250 g/L max."})
	said := {"signals": [{"id": "indoors", "no": false, "text": "indoors", "slot": "place", "at": _note.at}]}
	_found(420, {}, [inside]) == set()
	{[f.line, f.message] | some f in _found(420, said, [inside])} == {[
		"W!12",
		"PR-4 has 420 g/L VOC; the notes allow 250 g/L there",
	]}
}

# What is too strong near an intake alone is told at the row.
test_near_an_intake[place] if {
	near := object.union(_note, {"max": 50, "scope": "within 4 m of intakes", "text": "within 4 m of intakes 50 g/L"})
	some place, n in {"L2, 2 m from an intake": 1, "L2, 9 m from an intake": 0}
	found := _found(200, {"place": place}, [_note, near])
	count([f | some f in found; f.line == "W!12"]) == n
	count(found) == n
}

# A primer that one row has where the other rows of its sheet have another was chosen there.
test_chosen_by_one_row[name] if {
	some name, case in {
		"the others have another": {"other": "PR-2", "own": "FL-2", "at": {"W!12"}},
		"the others have the same": {"other": "PR-4", "own": "FL-2", "at": {"product"}},
		"the others are of another sheet": {"other": "PR-2", "own": "FL-9", "at": {"product"}},
	}
	strong := desk.product("PR-4", 15, {"role": "primer", "figures": {"voc_gl": desk.figure(420, "420", "g/L")}})
	mild := desk.product("PR-2", 16, {"role": "primer", "figures": {"voc_gl": desk.figure(90, "90", "g/L")}})
	rows := [
		desk.row(12, "FL-2", {"items": [
			object.union(desk.own(12, "FL-2"), {"product": "FL-2"}),
			desk.named(12, bench.butyl_primer, "PR-4"),
		]}),
		desk.row(13, case.own, {"items": [
			object.union(desk.own(13, case.own), {"product": case.own}),
			desk.named(13, bench.butyl_primer, case.other),
		]}),
	]
	found := voc_limit.findings with input as desk.document(rows, [strong, mild], [_note])
	{where | some f in found; where := object.get(f, "line", "product")} == case.at
}
