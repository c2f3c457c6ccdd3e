# METADATA
# title: Material for tests of substitutions, and tests of how swaps are named
package lib.swap_test

import data.lib.bench_test
import data.lib.swap

# figure is a stated figure: figure(1.016, "40 mil", "mil").
figure(value, text, unit) := {
	"min": value,
	"max": value,
	"no_limit": false,
	"text": text,
	"unit": unit,
	"disagree": false,
	"other": null,
	"assumed": false,
	"problem": "",
	"at": {"sheet": "D", "row": 3, "cell": "F3"},
}

blank := object.union(figure(0, "", ""), {"min": null, "max": null})

compared(kind, was, now, order) := {"kind": kind, "was": was, "now": now, "order": order}

# offer is one side of a swap, with data.
offer(text, keys, more) := object.union(
	{
		"text": text,
		"tag": text,
		"product": text,
		"role": "membrane",
		"family": keys[0],
		"name": "sheet",
		"class": "membrane",
		"keys": keys,
		"data": true,
		"texts": {},
		"at": {"sheet": "W", "row": 12, "cell": "D12"},
	},
	more,
)

asphaltic := offer("FM-1", ["rubberized-asphalt-membrane", "asphaltic"], {})

other_asphaltic := offer("ZM-1", ["rubberized-asphalt-membrane", "asphaltic"], {})

butyl := offer("ZB-1", ["butyl-flashing-tape", "butyl"], {})

# a_swap puts one product in the place of another in the material column; more overrides.
a_swap(was, now, more) := object.union(
	{"slot": "material", "same": false, "was": was, "now": now, "figures": [], "lost": []},
	more,
)

# of_figures is a swap of two asphaltic sheets that differ in figures.
of_figures(figures) := a_swap(asphaltic, other_asphaltic, {"figures": figures})

pair(swaps, more) := object.union(
	{
		"line": "W!12",
		"was": {
			"line": "S!30",
			"mark": "W2",
			"place": "north wall",
			"text": "FM-1",
			"role": "membrane",
			"at": {"sheet": "S", "row": 30, "cell": "C30"},
		},
		"score": 0.9,
		"next": 0.4,
		"sure": true,
		"split": false,
		"quoted": "",
		"swaps": swaps,
		"changes": [],
	},
	more,
)

# document carries one pair at W!12; struck is the pair at the struck line W!14.
document(swaps) := with_pairs([pair(swaps, {})])

struck(swaps) := with_pairs([pair(swaps, {"line": "W!14"})])

with_pairs(pairs) := object.union(bench_test.document([], []), {
	"file": "offer.xlsx",
	"comparison": {"specified": "spec.xlsx", "asks": "", "pairs": pairs, "removed": [], "added": []},
})

# one is the swap with its line and pair, as rules see it.
one(a) := {"line": bench_test.line("W!12", 12, {}), "pair": pair([a], {}), "swap": a}

test_names if swap.names(a_swap(asphaltic, butyl, {})) == "ZB-1 in place of FM-1"

test_names_of_changed_data if swap.names(a_swap(asphaltic, asphaltic, {"same": true})) == "FM-1 as offered"

test_words_give_way_to_the_kind if {
	board := offer("polyiso (foil", ["polyiso"], {"tag": "", "data": false, "name": "Polyiso board"})
	swap.called(board) == "polyiso board"
}

test_struck_lines_have_no_swaps if count(swap.all) == 0 with input as struck([a_swap(asphaltic, butyl, {})])

test_no_comparison_no_swaps if count(swap.all) == 0 with input as bench_test.document([], [])

test_neighbor_told_in_its_own_row if {
	mine := a_swap(asphaltic, butyl, {})
	beside := a_swap(asphaltic, butyl, {"slot": "touches"})
	both := swap.at_its_own_rows with input as document([mine, beside])
	[o.swap.slot | some o in both] == ["material"]
	alone := swap.at_its_own_rows with input as document([beside])
	[o.swap.slot | some o in alone] == ["touches"]
}

test_vapor_class if {
	swap.vapor_class(2.8) == 0
	swap.vapor_class(57) == 1
	swap.vapor_class(1000) == 3
}

test_what_the_designer_answered_is_no_swap if {
	said := {"id": "change_accepted", "no": false, "text": "RFI 12 answered", "slot": "remark"}
	line := {"id": "W!12", "struck": false, "signals": []}
	pairs := [{"line": "W!12", "swaps": [{"slot": "material"}]}]
	doc := {"comparison": {"pairs": pairs}, "lines": [line]}
	count(swap.all) == 1 with input as doc
	count(swap.all) == 0 with input as object.union(doc, {"lines": [object.union(line, {"signals": [said]})]})
}
