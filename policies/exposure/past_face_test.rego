package exposure.past_face_test

import data.exposure.past_face
import data.lib.bench_test as base
import data.lib.season_bench_test as bench

_past := bench.signal("runs_past_face", "edge", "past brick face as the drip")

_row(signals) := {"items": [bench.own], "signals": signals}

_allows(days) := bench.product({"figures": {"exposure_days": bench.figure(days, null, "x", "days")}})

_found(line, products) := found if {
	found := past_face.findings with input as bench.document([bench.sheet(line)], products, [])
}

test_whole_finding if {
	past := object.union(_past, {"at": {"sheet": "W", "row": 12, "cell": "O12"}})
	_found(_row([past]), [_allows(90)]) == {{
		"line": "W!12",
		"cells": ["C12", "O12"],
		"message": concat(" ", [
			`FM-1 (rubberized-asphalt-membrane) runs past the face and stays in daylight ("past brick face as the drip");`,
			"its data allows 90 days, and no metal edge is shown",
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["G4"], "what": "its data allows 90 days"}],
	}}
}

test_severity[name] if {
	never := bench.product({"signals": [base.said("never_exposed", "never left in daylight")]})
	foil := object.union(_row([_past]), {"items": [object.union(bench.own, {"keys": ["butyl", "foil-faced"]})]})
	some name, tc in {
		"never exposed": {"line": _row([_past]), "product": never, "want": {"error"}},
		"no data": {"line": _row([_past]), "product": bench.product({}), "want": {"warning"}},
		"foil with a limit": {"line": foil, "product": _allows(180), "want": {"warning"}},
		"foil without data": {"line": foil, "product": bench.product({}), "want": set()},
	}
	{f.severity | some f in _found(tc.line, [tc.product])} == tc.want
}

test_silent[name] if {
	some name, line in {
		"held back": _row([_past, bench.signal("held_back", "remark", "sheet held 1/2 in back")]),
		"metal drip": _row([_past, bench.signal("drip_edge", "touches", "SS drip")]),
		"denied": _row([bench.denial("runs_past_face", "edge", "not past the face")]),
		"nothing said": _row([]),
		"another material": {"items": [bench.own, _sill], "signals": [_past]},
	}
	count(_found(line, [_allows(90)])) == 0
}

_sill := object.union(
	base.item("touches", "A-3 sill", "aluminum-sheet", "flashing-metal", ["metal"]),
	{"signals": ["runs_past_face"]},
)

test_words_of_the_drip_are_not_another_material if {
	drip := object.union(
		base.item("remark", "drip", "sheet-metal-unspecified", "flashing-metal", ["metal"]),
		{"signals": ["runs_past_face"]},
	)
	brick := object.union(base.item("remark", "brick", "clay-brick", "masonry", []), {"signals": ["runs_past_face"]})
	absent := object.union(_sill, {"polarity": "no"})
	count(_found({"items": [bench.own, drip, brick, absent], "signals": [_past]}, [_allows(90)])) == 1
}

test_may_stay[name] if {
	no_limit := object.union(bench.figure(null, null, "no limit", ""), {"no_limit": true})
	free := bench.product({"figures": {"exposure_days": no_limit}})
	some name, product in {
		"no limit": free,
		"may stay": bench.product({"signals": [base.said("may_stay_exposed", "foil may stay exposed")]}),
	}
	count(_found(_row([_past]), [product])) == 0
}

test_damp_proof_course_stands_proud if {
	course := object.union(bench.own, {"name": "Polymer damp proof course", "family": "epdm-membrane", "keys": ["epdm"]})
	count(_found({"items": [course], "signals": [_past]}, [_allows(90)])) == 0
	asphalt := object.union(course, {"keys": ["asphaltic"]})
	count(_found({"items": [asphalt], "signals": [_past]}, [_allows(90)])) == 1
}
