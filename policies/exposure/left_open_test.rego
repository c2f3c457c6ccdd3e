package exposure.left_open_test

import data.exposure.left_open
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_open := {"cover": object.union(bench.day("", "stays open", "L12"), {"state": "open"})}

_view := bench.signal("stays_exposed", "remark", "stays in view")

_allows(days) := bench.product({"figures": {"exposure_days": bench.figure(days, null, "x", "days")}})

_found(line, product) := found if {
	doc := bench.document([bench.sheet(object.union({"items": [bench.own]}, line))], [product], [])
	found := left_open.findings with input as doc
}

test_whole_finding if {
	_found({"dates": _open}, _allows(90)) == {{
		"line": "W!12",
		"cells": ["C12", "L12"],
		"message": concat(" ", [
			`FM-1 (rubberized-asphalt-membrane) stays in daylight for good ("stays open");`,
			"its data allows 90 days",
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["G4"], "what": "its data allows 90 days"}],
	}}
}

test_in_the_remark if {
	some f in _found({"signals": [_view]}, _allows(90))
	f.cells == ["C12", "M12"]
	contains(f.message, `("stays in view")`)
}

test_no_data_is_a_warning if {
	{f.severity | some f in _found({"dates": _open}, bench.product({}))} == {"warning"}
}

test_silent[name] if {
	joint := object.union(bench.item_of("sealant", "PU joint", "sealant"), {"signals": ["stays_exposed"]})
	dated := {"cover": bench.day("2026-06-29", "29 Jun", "L12")}
	some name, line in {
		"covered": {"dates": dated},
		"denied": {"signals": [bench.denial("stays_exposed", "remark", "not left exposed")]},
		"a joint in view": {"items": [bench.own, joint], "signals": [_view]},
		"told as run past the face": {"dates": _open, "signals": [bench.signal("runs_past_face", "edge", "as the drip")]},
		"tarped": {"dates": _open, "signals": [bench.signal("covered_otherwise", "remark", "tarped")]},
		"struck": {"dates": _open, "struck": true},
		"no cover column": {},
	}
	count(_found(line, _allows(90))) == 0
}

test_may_stay if {
	free := bench.product({"signals": [base.said("may_stay_exposed", "UV stable")]})
	count(_found({"dates": _open}, free)) == 0
}

test_a_day_of_the_cover_is_an_end if {
	line := {"signals": [_view], "dates": {"cover": bench.day("2026-07-24", "24 Jul", "L12")}}
	count(_found(line, _allows(90))) == 0
}
