package pairing.oily_wipe_test

import data.lib.desk_test as desk
import data.pairing.oily_wipe

_told := {
	"id": "oily_wipe",
	"no": false,
	"text": "wiped with diesel",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := oily_wipe.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: wiped with diesel, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"The face under FM-1 (rubberized-asphalt-membrane) is told to be cleaned with an oily fluid",
			"(\"wiped with diesel\")",
		]),
	}}
}

test_put_right[text] if {
	some text in ["wiped with diesel, taken off with alcohol, tape test passed"]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("wiped with diesel, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
	}
	count(_found("wiped with diesel", more)) == 0
}
