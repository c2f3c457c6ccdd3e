package exposure.still_open_test

import data.exposure.still_open
import data.lib.season_bench_test as bench

_product := bench.product({"figures": {"exposure_days": bench.figure(90, null, "90", "days")}})

_open(days) := {"min": days, "max": days, "last": days, "from": "2026-06-02", "to": "2026-09-30"}

_found(days, cover, more) := found if {
	line := bench.sheet(object.union(
		{
			"items": [bench.own],
			"texts": {"cover": cover},
			"dates": {"install": bench.day("2026-06-02", "2 Jun", "K12")},
			"spans": {"open_days": _open(days)},
		},
		more,
	))
	found := still_open.findings with input as bench.document([line], [_product], [])
}

test_fires_in_full if {
	_found(120, "not yet", {}) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "L12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is still open on 30 Sep 2026,",
			"120 days after it was set; its data allows 90 days",
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["G4"], "what": "its days open to the sun"}],
		"keys": {"days": 120, "allowed": 90},
	}}
}

test_empty_is_asked if {
	some found in _found(120, "", {})
	found.severity == "warning"
}

test_silent[name] if {
	some name, case in {
		"the last day": [90, {}],
		"by others": [120, {"signals": [bench.signal("by_others", "remark", "by roofer")]}],
		"a tarp": [120, {"signals": [bench.signal("covered_otherwise", "remark", "tarped")]}],
		"no day of the log": [0, {"spans": {"open_days": null}}],
	}
	count(_found(case[0], "open", case[1])) == 0
}
