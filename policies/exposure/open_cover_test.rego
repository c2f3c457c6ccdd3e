package exposure.open_cover_test

import data.exposure.open_cover
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_slats := bench.signal("open_cover", "touches", "slatted screen")

_allows(days) := bench.product({"figures": {"exposure_days": bench.figure(days, null, "x", "days")}})

_found(line, product) := found if {
	doc := bench.document([bench.sheet(object.union({"items": [bench.own]}, line))], [product], [])
	found := open_cover.findings with input as doc
}

test_whole_finding if {
	_found({"signals": [_slats]}, _allows(90)) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "M12"],
		"message": concat(" ", [
			`FM-1 (rubberized-asphalt-membrane) stays in daylight behind its cover ("slatted screen");`,
			"its data allows 90 days",
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["G4"], "what": "its data allows 90 days"}],
	}}
}

test_the_screen_is_no_cover if {
	slat := object.union(bench.item_of("touches", "alum. slats", "flashing-metal"), {
		"signals": ["open_cover"],
		"at": _slats.at,
	})
	count(_found({"items": [bench.own, slat], "signals": [_slats]}, _allows(90))) == 1
}

test_silent[name] if {
	wool := bench.item_of("touches", "wool", "insulation")
	some name, line in {
		"wool between": {"items": [bench.own, wool], "signals": [_slats]},
		"denied": {"signals": [bench.denial("open_cover", "touches", "closed-joint panels")]},
		"in a remark, maybe of another wall": {"signals": [bench.signal("open_cover", "remark", "slatted screen")]},
		"told as left open": {
			"dates": {"cover": object.union(bench.day("", "stays open", "L12"), {"state": "open"})},
			"signals": [_slats],
		},
		"struck": {"signals": [_slats], "struck": true},
	}
	count(_found(line, _allows(90))) == 0
}

test_may_stay if {
	free := bench.product({"signals": [base.said("may_stay_exposed", "UV stable")]})
	count(_found({"signals": [_slats]}, free)) == 0
}

# The row says that its sheet is seen through the cover, whatever lies between elsewhere.
test_shows_through[name] if {
	wool := bench.item_of("touches", "wool", "insulation")
	some name, case in {
		"seen": {"signals": [bench.signal("shows_through", "remark", "sheet visible in the joints")], "count": 1},
		"seen beside wool": {
			"items": [bench.own, wool],
			"signals": [_slats, bench.signal("shows_through", "remark", "sheet visible in the joints")],
			"count": 1,
		},
		"not seen": {"signals": [bench.denial("shows_through", "remark", "sheet not visible in the joints")], "count": 0},
	}
	count(_found(object.remove(case, ["count"]), _allows(90))) == case.count
}
