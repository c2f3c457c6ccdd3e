package substitution.worse_test

import data.lib.bench_test
import data.lib.swap_test
import data.substitution.worse

_thin := swap_test.compared(
	"thickness_mm",
	swap_test.figure(1.016, "40 mil", "mil"),
	swap_test.figure(0.8, "0.8 mm", "mm"),
	"lower",
)

_found(figures) := found if {
	found := worse.findings with input as swap_test.document([swap_test.of_figures(figures)])
}

_severity(figures) := [f.severity | some f in _found(figures)]

# On W!12 with more said of the line.
_on(line, figures) := [f.severity |
	document := object.union(swap_test.document([swap_test.of_figures(figures)]), line)
	found := worse.findings with input as document
	some f in found
]

test_thinner if {
	_found([_thin]) == {{
		"line": "W!12",
		"cells": ["D12"],
		"message": "ZM-1 in place of FM-1: thickness 0.8 mm instead of 40 mil",
		"severity": "warning",
		"related": [{"at": {"sheet": "S", "row": 30}, "cells": [], "what": "specified in spec.xlsx: FM-1"}],
	}}
}

test_two_losses_are_one_finding if {
	hotter := swap_test.compared(
		"service_max_c",
		swap_test.figure(116, "240 °F", "°F"),
		swap_test.figure(70, "158 °F", "°F"),
		"lower",
	)
	some f in _found([_thin, hotter])
	f.message == concat("", [
		"ZM-1 in place of FM-1: thickness 0.8 mm instead of 40 mil and ",
		"service temperature 158 °F instead of 240 °F",
	])
}

_thinner := swap_test.compared(
	"thickness_mm",
	swap_test.figure(1, "1 mm", "mm"),
	swap_test.figure(0.95, "0.95 mm", "mm"),
	"lower",
)

test_a_loss_not_felt_is_a_warning_where_equal_or_better_is_asked if {
	figures := [_thinner]
	leakier := [swap_test.compared(
		"air_lsm2",
		swap_test.figure(0.002, "0.002", ""),
		swap_test.figure(0.01, "0.01", ""),
		"higher",
	)]
	asked := {"comparison": {"asks": "no property lower"}}
	_severity(figures) == ["note"]
	_on(asked, figures) == ["warning"]
	_on(asked, leakier) == ["note"]
}

test_the_message_says_what_is_asked if {
	document := object.union(
		swap_test.document([swap_test.of_figures([_thinner])]),
		{"comparison": {"asks": "no property lower"}},
	)
	some f in worse.findings with input as document
	endswith(f.message, "; the specified schedule asks for \"no property lower\"")
}

test_equal_is_silent if count(_found([object.union(_thin, {"order": "equal"})])) == 0

test_thicker_is_silent if count(_found([object.union(_thin, {"order": "higher"})])) == 0

test_missing_is_silent if count(_found([object.union(_thin, {"now": swap_test.blank, "order": "missing"})])) == 0

test_struck_line_is_silent if {
	found := worse.findings with input as swap_test.struck([swap_test.of_figures([_thin])])
	count(found) == 0
}

test_little_thinner_is_a_note if {
	_severity([swap_test.compared(
		"thickness_mm",
		swap_test.figure(1.143, "45 mil", "mil"),
		swap_test.figure(1.0922, "43 mil", "mil"),
		"lower",
	)]) == ["note"]
}

_air(was, now) := swap_test.compared(
	"air_lsm2",
	swap_test.figure(was, "was", "L/(s·m²)"),
	swap_test.figure(now, "now", "L/(s·m²)"),
	"higher",
)

test_leaky if _severity([_air(0.008, 0.06)]) == ["warning"]

test_leakier_within_the_usual_limit_is_a_note if _severity([_air(0.003, 0.02)]) == ["note"]

_vapor(was, now, order) := swap_test.compared(
	"vapor_ng",
	swap_test.figure(was, "was", "ng"),
	swap_test.figure(now, "now", "ng"),
	order,
)

test_barrier_made_open if _severity([_vapor(2.86, 572, "higher")]) == ["warning"]

test_permeable_sheet_made_tight if _severity([_vapor(1030, 57, "lower")]) == ["warning"]

test_permeable_sheet_made_more_open_is_silent if count(_found([_vapor(1030, 1250, "higher")])) == 0

test_barrier_made_tighter_is_silent if count(_found([_vapor(5.1, 0.6, "lower")])) == 0

test_class_crossed_by_a_hair_is_silent if count(_found([_vapor(5.15, 6.3, "higher")])) == 0

_days(now) := swap_test.compared(
	"exposure_days",
	swap_test.figure(75, "75", "day"),
	swap_test.figure(now, "30", "day"),
	"lower",
)

test_fewer_days_with_no_plan if {
	some f in _found([_days(30)])
	f.severity == "warning"
	f.message == "ZM-1 in place of FM-1: days open to the sun 30 days instead of 75 days"
}

_planned(days) := {"lines": [bench_test.line("W!12", 12, {"spans": {"bare_days": {"last": days}}})]}

test_fewer_days_than_planned if _on(_planned(31), [_days(30)]) == ["warning"]

test_fewer_days_that_just_fit_are_a_note if _on(_planned(30), [_days(30)]) == ["note"]

_cold := swap_test.compared(
	"apply_min_c",
	swap_test.figure(-7, "20 °F", "°F"),
	swap_test.figure(4, "40 °F", "°F"),
	"higher",
)

_season(share) := {"windows": [{
	"line": "W!12",
	"checks": [{"text": "ZM-1", "bound": "apply_min_c", "share_below": share}],
}]}

test_warmer_limit_with_no_dates if _severity([_cold]) == ["warning"]

test_warmer_limit_in_winter if _on(_season(0.8), [_cold]) == ["warning"]

test_warmer_limit_in_summer_is_a_note if _on(_season(0), [_cold]) == ["note"]

_solvent := swap_test.compared(
	"voc_gl",
	swap_test.figure(40, "40 g/L", "g/L"),
	swap_test.figure(310, "310 g/L", "g/L"),
	"higher",
)

_limit(most) := {"project": {"signals": [], "limits": [{
	"kind": "voc_gl",
	"min": null,
	"max": most,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "VOC",
}]}}

test_more_voc_than_the_notes_allow if _on(_limit(250), [_solvent]) == ["warning"]

test_more_voc_within_the_notes_is_a_note if _on(_limit(350), [_solvent]) == ["note"]

test_more_voc_than_usual_with_no_limit if {
	primer := swap_test.offer("ZP-1", ["solvent-primer"], {"class": "primer", "role": "primer"})
	one := swap_test.a_swap(swap_test.asphaltic, primer, {"slot": "primer", "figures": [_solvent]})
	found := worse.findings with input as swap_test.document([one])
	[f.severity | some f in found] == ["warning"]
}

_fewer_days := swap_test.compared(
	"exposure_days",
	swap_test.figure(150, "150 days", "days"),
	swap_test.figure(90, "90 days", "days"),
	"lower",
)

# The plan leaves the sheet bare for 40 days; the specified row asks for a rating.
_rating(asked) := [f.severity |
	needs := swap_test.figure(asked, "asked", "days")
	figures := [swap_test.compared("min_exposure_days", needs, swap_test.blank, "missing")]
	pairs := [swap_test.pair([swap_test.of_figures([_fewer_days])], {"figures": figures})]
	planned := {"lines": [object.union(bench_test.line("W!12", 12, {}), {"spans": {"bare_days": {"last": 40}}})]}
	found := worse.findings with input as object.union(swap_test.with_pairs(pairs), planned)
	some f in found
]

test_fewer_days_than_the_row_asks_for if _rating(150) == ["warning"]

test_fewer_days_that_the_row_bears_is_a_note if _rating(90) == ["note"]

_cooler := swap_test.compared(
	"service_max_c",
	swap_test.figure(149, "300 °F", "°F"),
	swap_test.figure(93, "200 °F", "°F"),
	"lower",
)

# Sunlit metal asks of a sheet all the heat that it is rated for; in the wall the offered one bears what there is.
test_cooler_sheet if {
	coping := {"lines": [bench_test.line("W!12", 12, {"texts": {"touches": "dark bronze metal coping laid direct"}})]}
	_on(coping, [_cooler]) == ["warning"]
	_severity([_cooler]) == ["note"]
}

test_sheet_for_no_wall if {
	cool := swap_test.compared(
		"service_max_c",
		swap_test.figure(93, "200 °F", "°F"),
		swap_test.figure(60, "140 °F", "°F"),
		"lower",
	)
	_severity([cool]) == ["warning"]
}

# Mils compare nothing between two stuffs, nor tell how an open sheet or an acrylic tape does its work.
_thinner_of(was, now) := [f.severity |
	found := worse.findings with input as swap_test.document([swap_test.a_swap(was, now, {"figures": [_thin]})])
	some f in found
]

test_thinner_of_another_stuff_is_a_note if {
	_thinner_of(swap_test.asphaltic, swap_test.butyl) == ["note"]
	_thinner_of(swap_test.asphaltic, swap_test.other_asphaltic) == ["warning"]
}

test_thinner_open_sheet_is_a_note if {
	open := swap_test.offer("VP-1", ["acrylic-adhesive", "vapor-permeable"], {})
	_thinner_of(open, swap_test.offer("VP-2", ["acrylic-adhesive", "vapor-permeable"], {})) == ["note"]
}

test_cooler_bead_is_a_note if {
	bead := swap_test.offer("ZS-1", ["hybrid-sealant"], {"class": "sealant", "role": "sealant"})
	one := swap_test.a_swap(swap_test.asphaltic, bead, {"slot": "sealant", "figures": [_cooler]})
	found := worse.findings with input as swap_test.document([one])
	[f.severity | some f in found] == ["note"]
}
