package lib.bare_test

import data.lib.bare
import data.lib.season_bench_test as bench

_line(more) := bench.sheet(object.union(
	{"items": [bench.own], "spans": {"bare_days": bench.span(77, 80, 80, "2026-04-13", "2026-06-29")}},
	more,
))

_allows(days) := bench.product({"figures": {"exposure_days": bench.figure(days, null, "x", "days")}})

_note := bench.limit("exposure_days", {"max": 78, "text": "Cover all sheets within 78 days"})

_limits(products, notes) := held.limits if {
	some held in bare.held with input as bench.with_notes(bench.document([_line({})], products, []), notes, [])
}

test_data_and_notes if {
	_limits([_allows(60)], [_note]) == [
		{"days": 60, "by": "its data", "level": "error"},
		{"days": 78, "by": "the notes", "level": "warning"},
	]
}

test_within if {
	_limits([_allows(80)], []) == [{"days": 80, "by": "its data", "level": ""}]
}

test_usual_is_asked_about if {
	usual := {"list": [{"keys": ["asphaltic"], "days": 70, "name": "asphalt"}], "classes": ["membrane"]}
	limits := _limits([], []) with data.exposure.usual as usual
	limits == [{"days": 70, "by": "usual for asphalt", "level": "warning"}]
}

test_no_limit if {
	days := object.union(bench.figure(60, null, "none", "days"), {"no_limit": true})
	_limits([bench.product({"figures": {"exposure_days": days}})], []) == []
}
