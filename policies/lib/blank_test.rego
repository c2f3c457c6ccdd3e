package lib.blank_test

import data.lib.blank
import data.lib.desk_test as desk

test_blank if {
	row := desk.row(12, "R-1", {"texts": {"primer": " ", "substrate": "CMU"}})
	blank.is_blank(row, "primer")
	not blank.is_blank(row, "substrate")
	not blank.is_blank(row, "no_such_column")
}

test_columns_by_letter[name] if {
	some name, case in {
		"inside": {"text": "fill in every cell D to J", "slot": "primer", "asked": 1},
		"first": {"text": "cells F-J are filled", "slot": "primer", "asked": 1},
		"outside": {"text": "columns A to C", "slot": "primer", "asked": 0},
		"two letters": {"text": "columns E to AB", "slot": "primer", "asked": 1},
		"no letters": {"text": "leave no cell empty", "slot": "primer", "asked": 1},
		"no letters, other slot": {"text": "leave no cell empty", "slot": "touches", "asked": 0},
	}
	row := desk.row(12, "R-1", {})
	doc := desk.document([row], [], [desk.limit("filled_cells", null, null, {"text": case.text})])
	found := blank.demands(row, case.slot) with input as doc
	count(found) == case.asked
}
