package sequence.concrete_later_test

import data.lib.season_bench_test as bench
import data.sequence.concrete_later

_age(least, most, at) := {
	"spans": {"concrete_age_days": bench.span(least, most, least, "2026-03-16", "2026-03-09")},
	"dates": {"placed": object.union(bench.day("2026-03-16", "Mar 16", "Q12"), {"at": at})},
}

_here := {"sheet": "W", "row": 12, "cell": "Q12"}

_note := bench.limit("concrete_age_days", {"min": 14, "text": "14 days"})

_found(line, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(line)], [], []), limits, [])
	found := concrete_later.findings with input as doc
}

test_whole_finding if {
	_found(_age(-7, -7, _here), [_note]) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "K12", "Q12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes on 9 Mar 2026, 7 days before its concrete is placed on 16 Mar 2026;",
			"the notes ask for 14 days after that",
		]),
		"related": [],
	}}
}

test_sheet_of_pours if {
	pour := {"sheet": "Pours", "row": 9, "cell": "B9"}
	some f in _found(_age(-7, -7, pour), [])
	f.related == [{"at": pour, "cells": ["B9"], "what": "the concrete is placed here"}]
	endswith(f.message, "on 16 Mar 2026")
}

_blind(more) := object.union(
	_age(-7, -7, _here),
	{"items": [object.union(bench.own, more)]},
)

test_blindside if {
	count(_found(_blind({}), [])) == 1
	count(_found(_blind({"family": "hdpe-blindside-membrane"}), [])) == 0
	count(_found(_blind({"text": "pre-applied sheet"}), [])) == 0
	poured := object.union(_blind({}), {"texts": {"remark": "wall is cast against the sheet"}})
	count(_found(poured, [])) == 0
}

test_silent[name] if {
	some name, line in {
		"the same day": _age(0, 0, _here),
		"a range that overlaps": _age(-3, 3, _here),
		"old enough": _age(14, 14, _here),
		"no dates": {},
		"struck": object.union(_age(-7, -7, _here), {"struck": true}),
	}
	count(_found(line, [_note])) == 0
}
