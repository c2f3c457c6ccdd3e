package sequence.cover_uninspected_test

import data.lib.season_bench_test as bench
import data.sequence.cover_uninspected

_row(most) := bench.sheet({
	"spans": {"unseen_days": bench.span(most, most, most, "2027-07-20", "2027-07-13")},
	"cells": {"inspected": "R12", "cover": "L12"},
})

_found(lines) := found if {
	found := cover_uninspected.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([_row(-7)]) == {{
		"line": "W!12",
		"cells": ["L12", "R12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is covered on 13 Jul 2027, 7 days before its",
			"inspection on 20 Jul 2027",
		]),
	}}
}

test_same_day_is_fine if _found([_row(0)]) == set()

test_later_cover_is_fine if _found([_row(3)]) == set()

_flooded(bare, text) := object.union(_row(-2), {
	"spans": {
		"unseen_days": bench.span(-2, -2, -2, "2027-07-20", "2027-07-18"),
		"bare_days": bench.span(bare, bare, bare, "2027-07-18", "2027-07-18"),
	},
	"dates": {"inspected": {"text": text, "at": {"sheet": "W", "row": 12, "cell": "R12"}}},
})

test_flooded_after_the_soil if count(_found([_flooded(5, "water test 20 Jul")])) == 1

_then_soil(days) := object.union(
	_flooded(0, "Ponded 20-22 Jul, dry below"),
	{"spans": {"unseen_last_days": bench.span(days, days, days, "2027-07-20", "2027-07-19")}},
)

test_soil_over_the_protection_before_the_test if {
	count(_found([_then_soil(-1)])) == 1
	count(_found([_then_soil(2)])) == 0
}

test_silent[name] if {
	some name, row in {
		"protection laid with the membrane": _flooded(0, "Ponded 20-22 Jul, dry below"),
		"covered before it was laid": _flooded(-3, "water test 20 Jul"),
	}
	_found([row]) == set()
}

test_test_of_the_window_comes_later if {
	count(_found([_flooded(5, "window spray test 20 Jul, no leak")])) == 0
	count(_found([_flooded(5, "spray test 20 Jul, no leak")])) == 1
}

test_signed_off_next_day if count(_found([_flooded(0, "20 Jul 2027")])) == 1

test_without_dates if _found([bench.sheet({})]) == set()

_said(remark) := object.union(bench.sheet({"cells": {"remark": "M12", "cover": "L12"}}), {"texts": {"remark": remark}})

test_look_after_the_cover_in_words[remark] if {
	some remark in [
		"Pull tests after the wool is on",
		"Crew of the lab checks laps once cladding is hung.",
		"inspection when backfilling is done; no date",
		"Cover it first, inspect later",
		"Flood test after pavers are down",
		"Site inspection follows once it is covered up",
	]
	count(_found([_said(remark)])) == 1
}

test_silent_in_words[remark] if {
	some remark in [
		"Cladding only after pull test",
		"Inspect after brick ties are in, before boards",
		"Hose test of windows once cladding is up",
		"Insulation is not put on until inspected",
		"Inspect when membrane is complete, boards follow",
		"Blower door test after drywall is up",
		"Pull test after 7 days",
		"Test when gyp boards are up",
		"Test after primer is dry",
		"Inspected before it is covered up",
	]
	count(_found([_said(remark)])) == 0
}

_fronted(bare, front, told) := object.union(_flooded(bare, told), {"texts": {"front": front}})

test_protection_laid_the_day_after if {
	every front in ["1/8 in. asphalt protection board", "Protection course"] {
		count(_found([_fronted(1, front, "water test 20-22 Jul")])) == 0
	}
}

test_more_than_protection_the_day_after if {
	every front in ["pavers over protection board", "protection board + soil", "soil", "XPS and protection course"] {
		count(_found([_fronted(1, front, "water test 20-22 Jul")])) == 1
	}
	count(_found([_fronted(2, "Protection course", "water test 20-22 Jul")])) == 1
	count(_found([_fronted(1, "Protection course", "20 Jul 2027")])) == 1
}
