package performance.test_method_test

import data.lib.desk_test as desk
import data.performance.test_method

_found(text, more) := found if {
	product := object.union(desk.product("AB-2", 5, {"texts": {"air_test": text}}), more)
	found := test_method.findings with input as desk.document([desk.row(12, "AB-2", {})], [product], [])
}

test_fires_in_full if {
	_found("ASTM E283", {}) == {{
		"product": "AB-2",
		"cells": ["I5"],
		"message": concat("", [
			"the air permeance of AB-2 is told by \"ASTM E283\"; ASTM E283 tests windows, doors and curtain walls, ",
			"and a sheet is judged by E2178",
		]),
		"related": [{"line": "W!12", "cells": ["C12"], "what": "uses AB-2"}],
	}}
}

test_row_states_it if {
	more := {"texts": {"air_test": "E 96, method A"}, "cells": {"air_test": "P12"}}
	doc := desk.document([desk.row(12, "AB-2", more)], [], [])
	found := test_method.findings with input as doc
	{f.cells | some f in found} == {["P12"]}
}

test_silent[text] if {
	some text in ["ASTM E2178", "E2178 and E2357", "CAN/ULC-S741", "", "-", "independent lab", "E28310"]
	count(_found(text, {})) == 0
}

test_no_sheet if count(_found("ASTM E283", {"role": "cladding"})) == 0
