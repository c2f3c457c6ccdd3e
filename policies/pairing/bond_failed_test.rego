package pairing.bond_failed_test

import data.lib.desk_test as desk
import data.pairing.bond_failed

_told := {
	"id": "bond_failed",
	"no": false,
	"text": "adhesion test low",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := bond_failed.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: adhesion test low, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is told not to hold",
			"(\"adhesion test low\")",
		]),
	}}
}

test_put_right[text] if {
	some text in [
		"adhesion test low, reprimed, retest 24 psi", "adhesion test low at first; redone",
		"adhesion test low on the film, and so it is bedded on the metal",
	]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("adhesion test low, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
	}
	count(_found("adhesion test low", more)) == 0
}
