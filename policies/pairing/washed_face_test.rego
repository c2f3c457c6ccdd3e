package pairing.washed_face_test

import data.lib.bench_test as bench
import data.pairing.washed_face

_brick := bench.item("substrate", "brick", "clay-brick", "masonry", ["clay-masonry", "porous-masonry"])

_bead := bench.item("sealant", "S-4", "polyurethane-sealant", "sealant", ["polyurethane"])

_dated(days) := {
	"dates": {"washed": {"from": "2026-10-03", "at": {"sheet": "W", "row": 12, "cell": "E12"}}},
	"spans": {"drying_days": {"min": days, "max": days, "last": days, "from": "2026-10-03", "to": "2026-10-04"}},
}

_said(id, text) := {"signals": [bench.said(id, text)]}

_found(items, more) := found if {
	found := washed_face.findings with input as bench.schedule(items, more, [])
}

test_the_day_before if {
	_found([bench.sbs, _brick], _dated(1)) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) goes on brick that was washed the day before (3 Oct 2026), ",
			"and nothing shows that it has dried",
		]),
	}}
}

test_told_in_words if {
	_found([_bead, _brick], _said("washed_before", "hosed the evening before")) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "M12"],
		"message": concat("", [
			"S-4 (polyurethane-sealant) goes on brick that was washed just before ",
			"(\"hosed the evening before\"), and nothing shows that it has dried",
		]),
	}}
}

test_the_same_day if count(_found([bench.sbs, bench.block], _dated(0))) == 1

test_silent[name] if {
	some name, case in {
		"two days": {"items": [bench.sbs, _brick], "more": _dated(2)},
		"washed after": {"items": [bench.sbs, _brick], "more": _dated(-3)},
		"plywood": {"items": [bench.sbs, bench.plywood], "more": _dated(1)},
		"mortar only": {"items": [_brick], "more": _dated(1)},
		"dry": {"items": [bench.sbs, _brick], "more": object.union(_dated(1), _said("surface_dry", "dry"))},
		"read": {"items": [bench.sbs, _brick], "more": object.union(_dated(1), _said("moisture_tested", "meter 12 %"))},
		"days told beside the words": {
			"items": [bench.sbs, _brick],
			"more": object.union(_dated(5), _said("washed_before", "washed the day before")),
		},
		"struck": {"items": [bench.sbs, _brick], "more": object.union(_dated(1), {"struck": true})},
	}
	count(_found(case.items, case.more)) == 0
}

test_its_data_allows_damp if {
	product := bench.product("FM-1", {"texts": {"accepts": "brick, damp is fine"}})
	doc := bench.schedule([bench.own(bench.sbs), _brick], _dated(1), [product])
	found := washed_face.findings with input as doc
	count(found) == 0
}
