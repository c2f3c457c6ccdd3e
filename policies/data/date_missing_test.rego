package data.date_missing_test

import data.data.date_missing
import data.lib.desk_test as desk

_dated := desk.row(7, "FM-1", {"dates": {"install": {"state": "day", "text": "3 Mar 2026", "from": "2026-03-03"}}})

_demand := desk.limit("filled_cells", null, null, {"text": "Membranes and flashings: fill in every cell D to J."})

_found(more, limits) := found if {
	row := desk.row(12, "FL-2", more)
	found := date_missing.findings with input as desk.document([_dated, row], [], limits)
}

_empty := {"dates": {"install": {"state": "missing", "text": ""}}, "texts": {"install": ""}}

test_fires_in_full if {
	_found(_empty, []) == {{
		"line": "W!12",
		"cells": ["I12"],
		"severity": "warning",
		"message": "the installation date of FL-2 is empty, and the other sheets of the table have one",
	}}
}

test_demanded_by_the_notes if desk.levels(_found(_empty, [_demand])) == {"error"}

test_demand_for_other_columns if {
	other := object.union(_demand, {"text": "fill in cells A to C"})
	desk.levels(_found(_empty, [other])) == {"warning"}
}

test_silent[name] if {
	some name, more in {
		"dash": {"dates": {"install": {"state": "none", "text": "-"}}, "texts": {"install": "-"}},
		"words": {"dates": {"install": {"state": "open", "text": "TBD"}}, "texts": {"install": "TBD"}},
		"real date without words": {"dates": {"install": {"state": "day", "text": "3 Mar 2026"}}, "texts": {"install": ""}},
		"insulation": object.union(_empty, {"role": "insulation"}),
		"struck": object.union(_empty, {"struck": true}),
		"by others": object.union(_empty, {"signals": [desk.said(12, "by_others", "remark")]}),
		"other table": object.union(_empty, {"table": "t2"}),
	}
	count(_found(more, [])) == 0
}
