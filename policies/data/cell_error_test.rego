package data.cell_error_test

import data.data.cell_error
import data.lib.desk_test as desk

_found(texts) := found if {
	row := desk.row(12, "FM-1", {"texts": texts, "cells": {"material": "D12", "substrate": "F12", "mark": "A12"}})
	found := cell_error.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found({"material": "FM-1", "substrate": "#REF!"}) == {{
		"line": "W!12",
		"cells": ["F12"],
		"severity": "error",
		"message": "#REF! stands where the substrate should, so the row was not judged by it",
	}}
}

test_once_a_row if {
	some found in _found({"material": "#N/A", "substrate": "#N/A"})
	found.cells == ["D12", "F12"]
	found.message == "#N/A stands where the material and the substrate should, so the row was not judged by it"
}

test_warning_elsewhere if desk.levels(_found({"mark": "#NAME?"})) == {"warning"}

test_product if {
	product := object.union(desk.product("FM-1", 9, {}), {"texts": {"lap": "#DIV/0!"}})
	found := cell_error.findings with input as desk.document([], [product], [])
	desk.levels(found) == {"error"}
}

test_silent[text] if {
	some text in ["", "N/A", "#3 rebar", "item #N/A", "CMU"]
	count(_found({"substrate": text})) == 0
}

test_struck if {
	row := desk.row(12, "FM-1", {"texts": {"substrate": "#REF!"}, "struck": true})
	count(cell_error.findings) == 0 with input as desk.document([row], [], [])
}
