package lib.rows_test

import data.lib.bench_test as bench
import data.lib.rows

_worst(contact, table) := found if {
	found := rows.worst(rows.best(contact)).row.id with data.knowledge.pairs as bench.pairs(table)
}

_touch := bench.contact(bench.copper, bench.aluminum, {})

_harm := bench.row("copper", "aluminum", "incompatible", "galvanic", "error")

_fine := bench.row("aluminum", "copper", "compatible", "none", "note")

_mixed := bench.row("copper-sheet", "aluminum", "needs-confirmation", "galvanic", "warning")

_family := bench.row("aluminum-sheet", "copper-sheet", "compatible", "none", "note")

test_both_orders if _worst(_touch, [_fine]) == "aluminum__copper"

test_worse_wins_at_equal_rank if _worst(_touch, [_fine, _harm]) == "copper__aluminum"

test_family_and_trait_beats_two_traits if _worst(_touch, [_harm, _mixed]) == "copper-sheet__aluminum"

test_two_families_beat_all if _worst(_touch, [_harm, _mixed, _family]) == "aluminum-sheet__copper-sheet"

test_stand_in_gives_way if {
	general := object.union(_harm, {"condition": "Applies where no narrower row does.", "id": "general"})
	_worst(_touch, [general, _fine]) == "aluminum__copper"
	_worst(_touch, [general]) == "general"
}

test_no_row_no_judgement if {
	found := rows.best(_touch) with data.knowledge.pairs as {}
	found == []
}

test_state[name] if {
	wet := object.union(bench.row("copper", "aluminum", "incompatible", "solvent-attack", "error"), {"state": "uncured"})
	sealed := bench.contact(bench.copper, object.union(bench.aluminum, {"class": "sealant"}), {})
	some name, case in {
		"dry goods": {"contact": _touch, "rows": 0},
		"said to be wet": {"contact": object.union(_touch, {"wet": true}), "rows": 1},
		"a bead is wet once": {"contact": sealed, "rows": 1},
	}
	found := rows.best(case.contact) with data.knowledge.pairs as bench.pairs([wet])
	count(found) == case.rows
}

test_water_runs_one_way[name] if {
	row := object.union(_harm, {"exposure": "runoff", "order": "a-onto-b"})
	some name, case in {
		"down": {"contact": bench.contact(bench.copper, bench.aluminum, {"kind": "runoff"}), "rows": 1},
		"up": {"contact": bench.contact(bench.aluminum, bench.copper, {"kind": "runoff"}), "rows": 0},
		"touch": {"contact": _touch, "rows": 0},
	}
	found := rows.best(case.contact) with data.knowledge.pairs as bench.pairs([row])
	count(found) == case.rows
}

test_order_of_beads_counts_as_worse if {
	ordered := object.union(_harm, {"order": "b-over-a", "id": "ordered"})
	_worst(_touch, [_harm, ordered]) == "ordered"
}
