package vapor.vinyl_humid_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.two_barriers
import data.vapor.vinyl_humid

_vinyl := object.union(bench.item("remark", "vinyl wall covering", "vinyl-wall-covering", "other", ["vapor-tight"]), {
	"clause": "batt in studs, gyp. bd., vinyl wall covering on the outside walls",
	"at": {"sheet": "W", "row": 49, "cell": "M49"},
})

_batt := object.union(bench.item("remark", "batt", "glass-fiber-insulation", "insulation", []), {"at": {
	"sheet": "W",
	"row": 49,
	"cell": "M49",
}})

_doc(note, items) := object.union(
	desk.document(
		[desk.row(49, "AVB-2", {"items": array.concat([desk.own(49, "AVB-2")], items)})],
		[desk.product("AVB-2", 10, {"figures": {"vapor_ng": desk.figure(2.86, "0.05", "perm")}})],
		[],
	),
	{"project": {"notes": [{"text": note, "at": {"sheet": "N", "row": 4, "cell": "A4"}}]}},
)

_humid := "Climate zone 3A, hot-humid, heated and cooled."

test_fires_in_full if {
	found := vinyl_humid.findings with input as _doc(_humid, [_vinyl, _batt])
	found == {{
		"line": "W!49",
		"cells": ["C49", "M49"],
		"message": concat("", [
			"vinyl wall covering on an outside wall catches outdoor moisture in this hot, humid climate, ",
			"and AVB-2 outside is vapor-tight too",
		]),
	}}
}

test_ways_to_write_humid if {
	every note in ["Gulf coast, warm & humid", "humid + hot all year", "hot, humid site", "hot/humid"] {
		count(vinyl_humid.findings) == 1 with input as _doc(note, [_vinyl, _batt])
	}
	every note in ["humid hotel pool", "hot roof; humidity by the owner"] {
		count(vinyl_humid.findings) == 0 with input as _doc(note, [_vinyl, _batt])
	}
}

test_told_once if {
	count(two_barriers.findings) == 0 with input as _doc(_humid, [_vinyl, _batt])
	count(two_barriers.findings) == 1 with input as _doc("Cold climate.", [_vinyl, _batt])
}

test_silent[name] if {
	some name, case in {
		"cold climate": {"note": "Cold climate.", "items": [_vinyl, _batt]},
		"paint": {"note": _humid, "items": [_batt]},
		"no vinyl": {"note": _humid, "items": [object.union(_vinyl, {"polarity": "no"}), _batt]},
	}
	found := vinyl_humid.findings with input as _doc(case.note, case.items)
	count(found) == 0
}

# The vinyl is a layer of a wall type, told on a row of its own.
_listed(layers, note) := found if {
	doc := wall.document([wall.profile(layers, wall.mild, {})], {})
	noted := object.union(doc, {"project": object.union(doc.project, {"notes": [{
		"text": note,
		"at": {"sheet": "N", "row": 4, "cell": "A4"},
	}]})})
	found := vinyl_humid.findings with input as noted
}

_covering := object.union(
	wall.layer(35, "vinyl wallcovering", "vinyl-wall-covering", "other", 4),
	{"keys": ["vapor-tight"]},
)

test_vinyl_in_a_list_of_wall_types if {
	{f.line | some f in _listed([_covering, wall.batt, wall.sheathing, wall.open_sheet], _humid)} == {"W!35"}
}

test_vinyl_in_a_list_silent[name] if {
	some name, case in {
		"partition": {"layers": [_covering, wall.batt, wall.gypsum], "note": _humid},
		"cold": {"layers": [_covering, wall.batt, wall.sheathing, wall.open_sheet], "note": "Climate zone 6A"},
		"open to vapor": {
			"layers": [object.union(_covering, {"vapor_ng": 900}), wall.batt, wall.sheathing, wall.open_sheet],
			"note": _humid,
		},
	}
	count(_listed(case.layers, case.note)) == 0
}
