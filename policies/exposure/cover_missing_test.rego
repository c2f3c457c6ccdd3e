package exposure.cover_missing_test

import data.exposure.cover_missing
import data.lib.season_bench_test as bench

_allows := bench.product({"figures": {"exposure_days": bench.figure(90, null, "90", "days")}})

_set := bench.day("2026-06-02", "2 Jun", "K12")

_state(state) := {"items": [bench.own], "dates": {"install": _set, "cover": object.union(
	bench.day("", "", "L12"),
	{"state": state},
)}}

_other(state) := object.union(bench.sheet(_state(state)), {"id": "W!13", "row": 13})

_found(line, other, products) := found if {
	found := cover_missing.findings with input as bench.document([bench.sheet(line), _other(other)], products, [])
}

test_whole_finding if {
	_found(_state("missing"), "day", [_allows]) == {{
		"line": "W!12",
		"cells": ["L12"],
		"message": concat(" ", [
			"No cover date for FM-1 (rubberized-asphalt-membrane), set on 2 Jun 2026;",
			"its data allows 90 days in the sun",
		]),
		"severity": "note",
	}}
}

test_to_be_decided if {
	count(_found(_state("unknown"), "span", [_allows])) == 1
}

# "TBD" below grade is asked about, an empty cell there is not.
test_said_to_be_open if {
	tbd := object.union(_state("unknown"), {
		"dates": {"cover": {"text": "TBD"}},
		"signals": [bench.signal("below_grade", "place", "footing wall")],
	})
	{f.severity | some f in _found(tbd, "day", [_allows])} == {"warning"}
	blank := object.union(_state("missing"), {"signals": [bench.signal("below_grade", "place", "footing wall")]})
	count(_found(blank, "day", [_allows])) == 0
}

test_silent[name] if {
	others := bench.signal("by_others", "remark", "by roofer")
	some name, tc in {
		"a dash": {"line": _state("none"), "other": "day", "products": [_allows]},
		"no row has one": {"line": _state("missing"), "other": "missing", "products": [_allows]},
		"no column": {"line": {"items": [bench.own], "dates": {"install": _set}}, "other": "day", "products": [_allows]},
		"no limit known": {"line": _state("missing"), "other": "day", "products": [bench.product({})]},
		"called open by a log": {
			"line": object.union(_state("unknown"), {
				"texts": {"cover": "not yet"},
				"spans": {"open_days": {"min": 20, "max": 20, "last": 20}},
			}),
			"other": "day",
			"products": [_allows],
		},
		"by others": {
			"line": object.union(_state("missing"), {"signals": [others]}),
			"other": "day",
			"products": [_allows],
		},
	}
	count(_found(tc.line, tc.other, tc.products)) == 0
}

test_not_set_yet if {
	line := object.union(_state("missing"), {"dates": {"install": {"from": ""}}})
	count(_found(line, "day", [_allows])) == 0
}

# Where the notes ask for the date of every cover, an empty cell is asked about too.
test_notes_ask_for_the_date if {
	asked := {
		"kind": "cover_date", "min": null, "max": null, "roles": [], "keys": [], "scope": "", "when": [],
		"text": "each line shall have a cover date", "at": {"sheet": "Notes", "row": 4, "cell": "A4"},
	}
	row := bench.sheet(_state("missing"))
	doc := bench.document([row, _other("day")], [_allows], [])
	with_notes := object.union(doc, {"project": object.union(doc.project, {"limits": [asked]})})
	found := cover_missing.findings with input as with_notes
	{f.severity | some f in found} == {"warning"}
}

# The one empty cell of a long column is asked about; one of several, or of a short table, may be filled in later.
test_alone_in_a_long_table[name] if {
	some name, tc in {
		"the one of twelve": {"others": 11, "empty": 0, "want": "warning"},
		"one of three of twelve": {"others": 9, "empty": 2, "want": "note"},
		"the one of a few": {"others": 5, "empty": 0, "want": "note"},
	}
	dated := [object.union(_other("day"), {"id": sprintf("W!%d", [20 + i])}) |
		some i in numbers.range(1, tc.others)
	]
	bare := [object.union(_other("missing"), {"id": sprintf("W!%d", [50 + i])}) |
		some i in numbers.range(0, tc.empty)
		i > 0
	]
	lines := array.concat([bench.sheet(_state("missing"))], array.concat(dated, bare))
	found := cover_missing.findings with input as bench.document(lines, [_allows], [])
	{f.severity | some f in found; f.line == "W!12"} == {tc.want}
}

# What has no limit is no cell left empty: a dash there is its answer.
test_alone_among_those_with_a_limit[name] if {
	some name, tc in {
		"no limit": {"allows": bench.figure(null, null, "no limit", ""), "no_limit": true, "want": "warning"},
		"a limit": {"allows": bench.figure(90, null, "90", "days"), "no_limit": false, "want": "note"},
	}
	figure := object.union(tc.allows, {"no_limit": tc.no_limit})
	own := object.union(bench.own, {"product": "ZZ-1", "text": "ZZ-1"})
	none := [object.union(_other("none"), {"id": sprintf("W!%d", [50 + i]), "items": [own]}) |
		some i in numbers.range(1, 4)
	]
	dated := [object.union(_other("day"), {"id": sprintf("W!%d", [20 + i])}) | some i in numbers.range(1, 11)]
	lines := array.concat([bench.sheet(_state("missing"))], array.concat(dated, none))
	other := object.union(bench.product({"figures": {"exposure_days": figure}}), {"id": "ZZ-1", "tag": "ZZ-1"})
	found := cover_missing.findings with input as bench.document(lines, [_allows, other], [])
	{f.severity | some f in found; f.line == "W!12"} == {tc.want}
}

# What others cover on a day that the row calls open is asked about; what they only cover is theirs.
test_others_without_a_day[remark] if {
	some remark, n in {"Panels by tenant, start not known": 1, "Panels by tenant": 0, "By roofer, open joints": 0}
	line := object.union(_state("missing"), {
		"texts": {"remark": remark},
		"signals": [bench.signal("by_others", "remark", "by tenant")],
	})
	count(_found(line, "day", [_allows])) == n
}
