package performance.flashing_standard_test

import data.lib.desk_test as desk
import data.performance.flashing_standard

_found(family, class, texts) := found if {
	product := desk.product("FL-2", 7, {"family": family, "class": class, "texts": texts})
	found := flashing_standard.findings with input as desk.document([], [product], [])
}

test_fires_in_full if {
	_found("liquid-flashing", "membrane", {"air_test": "AAMA 711-13"}) == {{
		"product": "FL-2",
		"cells": ["I7"],
		"message": concat("", [
			"FL-2 is shown by \"AAMA 711-13\"; AAMA 711 is for self-adhered flashing, ",
			"and liquid-applied flashing is tested by AAMA 714",
		]),
		"related": [],
	}}
}

test_a_tape if {
	found := _found("butyl-flashing-tape", "tape", {"remark": "Tested to AAMA-714."})
	{f.message | some f in found} == {concat("", [
		"FL-2 is shown by \"Tested to AAMA-714.\"; AAMA 714 is for liquid-applied flashing, ",
		"and self-adhered flashing is tested by AAMA 711",
	])}
}

test_silent[name] if {
	some name, case in {
		"its own": ["liquid-flashing", "membrane", {"air_test": "AAMA 714"}],
		"both": ["liquid-flashing", "membrane", {"air_test": "AAMA 711", "remark": "and 714"}],
		"none told": ["liquid-flashing", "membrane", {"air_test": "-"}],
		"a primer": ["water-primer", "primer", {"air_test": "AAMA 714"}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
