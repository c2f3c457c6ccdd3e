package sequence.told_cover_test

import data.lib.desk_test as desk
import data.sequence.told_cover

_told := {
	"id": "covered_early",
	"no": false,
	"text": "wool on before the test",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := told_cover.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: wool on before the test, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is closed in before its inspection or test",
			"(\"wool on before the test\")",
		]),
	}}
}

test_put_right[text] if {
	some text in ["wool on before the test, opened up and tested", "wool on before the test, taken off, test passed"]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("wool on before the test, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
		"told by its dates": {"spans": {"unseen_days": {"min": -2, "max": -2}}},
	}
	count(_found("wool on before the test", more)) == 0
}
