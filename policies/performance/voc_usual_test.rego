package performance.voc_usual_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.performance.voc_usual

_found(value, role, limits) := found if {
	figures := {"voc_gl": desk.figure(value, sprintf("%v", [value]), "g/L")}
	primer := desk.product("PR-4", 15, {"role": role, "figures": figures})
	row := desk.row(12, "FL-2", {"items": [desk.named(12, bench.butyl_primer, "PR-4")]})
	found := voc_usual.findings with input as desk.document([row], [primer], limits)
}

test_fires_in_full if {
	_found(420, "primer", []) == {{
		"product": "PR-4",
		"cells": ["K15"],
		"message": concat("", [
			"PR-4 has 420 g/L VOC and the project states no limit; ",
			"many places allow 250 g/L for adhesive primers",
		]),
		"related": [{"line": "W!12", "cells": ["F12"], "what": "uses P-4"}],
	}}
}

test_silent[name] if {
	some name, case in {
		"at the limit": {"value": 250, "role": "primer", "limits": []},
		"project states one": {"value": 420, "role": "primer", "limits": [desk.limit("voc_gl", null, 450, {})]},
		"project states one for some rows": {
			"value": 420,
			"role": "primer",
			"limits": [desk.limit("voc_gl", null, 450, {"when": ["indoors"]})],
		},
		"other role": {"value": 420, "role": "coating", "limits": []},
	}
	count(_found(case.value, case.role, case.limits)) == 0
}

test_missing if {
	primer := desk.product("PR-4", 15, {"role": "primer"})
	count(voc_usual.findings) == 0 with input as desk.document([desk.row(12, "PR-4", {})], [primer], [])
}
