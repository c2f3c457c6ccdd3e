package performance.thickness_asked_test

import data.lib.desk_test as desk
import data.performance.thickness_asked

_found(mm, asked, more) := found if {
	figures := {"figures": {
		"thickness_mm": desk.figure(mm, sprintf("%v", [mm]), "mm"),
		"min_thickness_mm": desk.figure(asked, sprintf("%v", [asked]), "mm"),
	}}
	row := object.union(desk.row(12, "R-1", figures), more)
	found := thickness_asked.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found(0.8, 1, {}) == {{
		"line": "W!12",
		"cells": ["C12", "D12", "O12"],
		"message": "R-1 is 0.8 mm thick, but the row asks for 1 mm",
	}}
}

test_silent[name] if {
	some name, case in {
		"equal": {"mm": 1, "more": {}},
		"thicker": {"mm": 2, "more": {}},
		"struck": {"mm": 0.8, "more": {"struck": true}},
		"board": {"mm": 0.8, "more": {"role": "insulation"}},
	}
	count(_found(case.mm, 1, case.more)) == 0
}

test_missing if {
	count(thickness_asked.findings) == 0 with input as desk.document([desk.row(12, "R-1", {})], [], [])
}
