package sequence.told_order_test

import data.lib.desk_test as desk
import data.sequence.told_order

_told := {
	"id": "out_of_order",
	"no": false,
	"text": "doors set before the pan",
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

_found(text, more) := found if {
	row := desk.row(12, "FM-1", object.union({"signals": [_told], "texts": {"remark": text}}, more))
	found := told_order.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found("Mon: doors set before the pan, so be it", {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is built out of order",
			"(\"doors set before the pan\")",
		]),
	}}
}

test_put_right[text] if {
	some text in ["doors set before the pan; taken out, pan laid, reset", "doors set before the pan, put right"]
	count(_found(text, {})) == 0
}

test_not_put_right if count(_found("doors set before the pan, never patched", {})) == 1

test_silent[name] if {
	some name, more in {
		"struck": {"struck": true},
		"denied": {"signals": [object.union(_told, {"no": true})]},
		"nothing told": {"signals": []},
	}
	count(_found("doors set before the pan", more)) == 0
}

# The lap that the order turns round is told once.
test_told_as_lap if {
	lap := object.union(_told, {"id": "lap_reversed", "text": "pan last"})
	count(_found("doors set before the pan", {"role": "membrane", "signals": [_told, lap]})) == 0
}

test_lap_in_another_cell if {
	lap := object.union(_told, {"id": "lap_reversed", "slot": "lap", "at": {"sheet": "W", "row": 12, "cell": "K12"}})
	count(_found("doors set before the pan", {"role": "membrane", "signals": [_told, lap]})) == 1
}
