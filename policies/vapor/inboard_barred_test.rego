package vapor.inboard_barred_test

import data.lib.bench_test as bench
import data.vapor.inboard_barred

_batt(clause) := object.union(
	bench.item("touches", "batt", "batt-insulation", "insulation", ["mineral-wool"]),
	{"clause": clause},
)

_wall(says) := bench.line("T!4", 4, {
	"sheet": "T",
	"table": "t2",
	"mark": "W4",
	"texts": {"layers": "block; sheet; wool; brick", "remark": says},
})

_found(group, clause, says) := found if {
	row := bench.line("W!12", 12, {"group": group, "items": [bench.sbs, _batt(clause)]})
	doc := object.union(bench.document([], []), {"lines": [row, _wall(says)]})
	found := inboard_barred.findings with input as doc
}

test_whole_message if {
	{f.message | some f in _found("W4 LAUNDRY WALL", "60 batt inboard", "No inboard insulation.")} == {concat("", [
		"batt lies on the room side (\"60 batt inboard\"), but wall type W4 says \"No inboard insulation.\"",
	])}
}

test_in_other_words if {
	every says in [
		"all insulation outside of sheet",
		"Insulation: none inside",
		"no batts inside",
		"no stud or interior insulation",
	] {
		count(_found("W4", "batt on the room side", says)) == 1
	}
}

test_insulation_outside if count(_found("W4", "100 wool outboard; batt", "No inboard insulation")) == 0

test_wall_type_that_bars_nothing if count(_found("W4", "batt inboard", "batts inboard in studs")) == 0

test_row_of_another_wall if {
	every group in ["W41 STORE", "W5", ""] {
		count(_found(group, "batt inboard", "No inboard insulation")) == 0
	}
}
