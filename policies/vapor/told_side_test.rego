package vapor.told_side_test

import data.lib.desk_test as desk
import data.vapor.told_side

_found(type, clause, more) := found if {
	product := desk.product("JS-1", 5, {"texts": {"type": type}})
	item := object.union(desk.own(12, "JS-1"), {"clause": clause})
	row := object.union(desk.row(12, "JS-1", {"items": [item]}), more)
	found := told_side.findings with input as desk.document([row], [product], [])
}

test_fires_in_full if {
	_found("frame tape, warm side", "JS-1 at the exterior face", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12"],
		"message": `JS-1, by its data for the room side, goes on the weather side ("JS-1 at the exterior face")`,
		"related": [{"product": "JS-1", "cells": ["B5", "C5"], "what": "its data on the side"}],
		"facts": [desk.own(12, "JS-1").id],
	}}
}

test_told_by_the_row if {
	count(_found("frame tape for the outside face", "JS-1", {"texts": {"substrate": "CMU jamb, inner face"}})) == 1
}

test_silent[name] if {
	some name, case in {
		"the right side": ["frame tape, warm side", "JS-1 on the interior side", {}],
		"no side in the data": ["frame tape", "JS-1 at the exterior face", {}],
		"both sides in the data": ["frame tape, inner face or outer face", "JS-1 at the exterior face", {}],
		"no side in the row": ["frame tape, warm side", "JS-1", {}],
		"the cell of the strip counts": [
			"frame tape, warm side",
			"JS-1 on the room side",
			{"texts": {"place": "Storefront, outer face"}},
		],
		"place and substrate differ": [
			"frame tape, warm side",
			"JS-1",
			{"texts": {"place": "Storefront, outer face", "substrate": "stud, inner face"}},
		],
		"parapet": ["frame tape, weather side", "JS-1", {"place": "Parapet", "texts": {"place": "Parapet, inner face"}}],
		"struck": ["frame tape, warm side", "JS-1 at the exterior face", {"struck": true}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
