package substitution.stood_in_test

import data.lib.desk_test as desk
import data.substitution.stood_in

_was(id) := object.union(desk.own(12, id), {"polarity": "no", "relation": "instead_of"})

_now(id) := object.union(desk.own(12, id), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})

_data(id, row, ng) := desk.product(id, row, {"figures": {"vapor_ng": _vapor(ng)}})

_vapor(ng) := desk.figure(ng, sprintf("%v", [ng]), "ng/(Pa·s·m²)")

_found(items, more, before, after) := found if {
	row := desk.row(12, "PS-4", object.union({"items": items}, more))
	doc := desk.document([row], [_data("PS-4", 5, before), _data("TS-1", 6, after)], [])
	found := stood_in.findings with input as doc
}

_swapped := [_was("PS-4"), _now("TS-1")]

test_fires_in_full if {
	_found(_swapped, {}, 900, 3) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat(" ", [
			"TS-1 came in place of PS-4 and lets 3 ng/(Pa·s·m²) of vapor through,",
			"where the row's own lets 900 ng/(Pa·s·m²)",
		]),
		"related": [
			{"product": "TS-1", "cells": ["J6"], "what": "its data"},
			{"product": "PS-4", "cells": ["J5"], "what": "that of the row's own"},
		],
	}}
}

test_silent[name] if {
	some name, case in {
		"as open": [_swapped, {}, 900, 600],
		"was tight": [_swapped, {}, 60, 3],
		"nothing came": [[_now("PS-4")], {}, 900, 3],
		"struck": [_swapped, {"struck": true}, 900, 3],
		"answered": [_swapped, {"signals": [{"id": "change_accepted", "no": false, "text": "ok", "slot": "remark"}]}, 900, 3],
	}
	count(_found(case[0], case[1], case[2], case[3])) == 0
}
