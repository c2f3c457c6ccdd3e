package performance.pull_low_test

import data.lib.desk_test as desk
import data.performance.pull_low

_psi := 6894.757

_limit := desk.limit("pull_pa", 16 * _psi, null, {"text": "Pulls: 16 psi min."})

_found(psi, text, more) := found if {
	pull := object.union(desk.figure(psi * _psi, text, "psi"), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})
	row := desk.row(12, "FM-1", object.union({"figures": {"pull_pa": pull}, "texts": {"remark": text}}, more))
	found := pull_low.findings with input as desk.document([row], [desk.product("FM-1", 7, {})], [_limit])
}

test_fires_in_full if {
	_found(8, "8 psi", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"The pull test of FM-1 (rubberized-asphalt-membrane) gave 8 psi;",
			"the notes ask for 16 psi or more",
		]),
		"related": [{"at": _limit.at, "cells": ["A3"], "what": "Pulls: 16 psi min."}],
	}}
}

test_of_fluids if {
	fluids := object.union(_limit, {"keys": ["fluid-applied-unspecified"]})
	family := "fluid-applied-stpe-air-barrier"
	coat := object.union(desk.own(12, "FM-1"), {"family": family, "keys": [family]})
	pull := object.union(desk.figure(8 * _psi, "8 psi", "psi"), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})
	sheet := desk.row(12, "FM-1", {"figures": {"pull_pa": pull}, "texts": {}})
	count(pull_low.findings) == 0 with input as desk.document([sheet], [], [fluids])
	rolled := object.union(sheet, {"items": [coat]})
	count(pull_low.findings) == 1 with input as desk.document([rolled], [], [fluids])
}

test_silent[name] if {
	some name, case in {
		"at the limit": {"psi": 16, "text": "16 psi", "more": {}},
		"by rounding": {"psi": 15.8, "text": "15.8 psi", "more": {}},
		"tested again": {"psi": 9, "text": "9 psi, retest 21 psi", "more": {}},
		"struck": {"psi": 9, "text": "9 psi", "more": {"struck": true}},
	}
	count(_found(case.psi, case.text, case.more)) == 0
}
