package data.tag_twice_test

import data.data.tag_twice
import data.lib.desk_test as desk

_first := desk.product("BT-1", 18, {
	"name": "Butyl tape",
	"family": "preformed-butyl-glazing-tape",
	"repeats": true,
	"figures": {"service_max_c": desk.figure(82, "180", "F")},
})

_second(more) := object.union(
	object.union(_first, {"id": "BT-1@P!26", "row": 26, "cells": {"tag": "A26", "material": "B26", "type": "C26"}}),
	more,
)

_found(more) := found if {
	row := object.union(desk.row(12, "BT-1", {}), {"struck": false})
	found := tag_twice.findings with input as desk.document([row], [_first, _second(more)], [])
}

test_fires_in_full if {
	_found({"name": "Asphalt mastic tape", "family": "rubberized-asphalt-flashing-tape"}) == {{
		"product": "BT-1@P!26",
		"cells": ["A26", "B26", "C26"],
		"message": "BT-1 stands for two products: butyl tape and asphalt mastic tape",
		"related": [
			{"product": "BT-1", "cells": ["A18", "B18", "C18"], "what": "the other one"},
			{"line": "W!12", "cells": ["C12"], "what": "uses the tag"},
		],
	}}
}

test_other_figure if {
	found := _found({"figures": {"service_max_c": desk.figure(66, "150", "F")}})
	{f.message | some f in found} == {"BT-1 stands for two products: service temperature 180 and 150"}
}

test_silent[name] if {
	some name, more in {
		"word for word": {},
		"rounding": {"figures": {"service_max_c": desk.figure(82.2, "180", "F")}},
		"not marked as a repeat": {"repeats": false, "family": "epdm-gasket"},
		"another tag": {"tag": "BT-2", "family": "epdm-gasket"},
		"family not read": {"family": "", "name": ""},
	}
	count(_found(more)) == 0
}
