package exposure.project_limit_test

import data.exposure.project_limit
import data.lib.season_bench_test as bench

_bare(days) := {
	"items": [bench.own],
	"place": "north wall",
	"spans": {"bare_days": bench.span(days, days, days, "2026-05-01", "2026-06-20")},
}

_note := bench.limit("exposure_days", {"max": 30, "text": "Cover all sheets within 30 days"})

_found(days, allowed, limit) := found if {
	product := bench.product({"figures": {"exposure_days": bench.figure(allowed, null, "x", "days")}})
	doc := bench.with_notes(bench.document([bench.sheet(_bare(days))], [product], []), [limit], [])
	found := project_limit.findings with input as doc
}

test_whole_finding if {
	_found(50, 60, _note) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "L12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) stays bare 50 days (1 May to 20 Jun 2026); the notes",
			"allow 30 days",
		]),
		"severity": "error",
		"related": [{"at": _note.at, "cells": ["A9"], "what": "Cover all sheets within 30 days"}],
	}}
}

test_silent[name] if {
	some name, tc in {
		"on the limit": {"days": 30, "allowed": 60, "limit": _note},
		"its own limit is passed as well": {"days": 70, "allowed": 60, "limit": _note},
		"another place": {"days": 50, "allowed": 60, "limit": object.union(_note, {"scope": "roof"})},
		"another role": {"days": 50, "allowed": 60, "limit": object.union(_note, {"roles": ["coating"]})},
		"another kind": {"days": 50, "allowed": 60, "limit": object.union(_note, {"kind": "lap_mm"})},
	}
	count(_found(tc.days, tc.allowed, tc.limit)) == 0
}

test_a_day_over if {
	count(_found(31, 60, _note)) == 1
}

test_note_that_gives_way if {
	yields := object.union(_note, {"text": "30 days in the sun, except where the makers' data allows more"})
	count(_found(50, 60, yields)) == 0
}
