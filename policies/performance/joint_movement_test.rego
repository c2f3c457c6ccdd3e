package performance.joint_movement_test

import data.lib.desk_test as desk
import data.performance.joint_movement

_figure(value, text, unit, sheet, row, cell) := object.union(
	desk.figure(value, text, unit),
	{"at": {"sheet": sheet, "row": row, "cell": cell}},
)

_moves(mm) := _figure(mm, sprintf("%v mm", [mm]), "mm", "W", 12, "M12")

_joint(depth, width) := object.union(
	_figure(depth, sprintf("%v x %v mm", [width, depth]), "mm", "W", 12, "D12"),
	{"max": width},
)

_bears(share, text) := _figure(share, text, "%", "P", 7, "B7")

_row(figures, more) := desk.row(12, "JS-3", object.union({"role": "sealant", "figures": figures}, more))

_found(row, figures) := found if {
	doc := desk.document([row], [desk.product("JS-3", 7, {"figures": figures})], [])
	found := joint_movement.findings with input as doc
}

test_fires_in_full if {
	row := _row({"movement_mm": _moves(6), "joint_mm": _joint(6, 12)}, {})
	_found(row, {"movement": _bears(0.25, "25 %")}) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"JS-3 (rubberized-asphalt-membrane) bears 25 % of the width each way;",
			"this joint of 12 mm moves 6 mm each way, or 50 %",
		]),
		"related": [{"product": "JS-3", "cells": ["B7"], "what": "its data"}],
	}}
}

test_silent[name] if {
	wide := {"movement_mm": _moves(6), "joint_mm": _joint(6, 12)}
	bears := {"movement": _bears(0.25, "25 %")}
	some name, case in {
		"at the limit": [_row({"movement_mm": _moves(3), "joint_mm": _joint(6, 12)}, {}), bears],
		"a better class": [_row(wide, {}), {"movement": _bears(0.5, "50 %")}],
		"deeper than wide, by the larger": [_row({"movement_mm": _moves(3), "joint_mm": _joint(8, 12)}, {}), bears],
		"no movement told": [_row({"joint_mm": _joint(6, 12)}, {}), bears],
		"no width told": [_row({"movement_mm": _moves(6)}, {}), bears],
		"data has no class": [_row(wide, {}), {}],
		"no class but a tolerance": [_row(wide, {}), {"movement": _bears(0.02, "2 %")}],
		"a membrane": [_row(wide, {"role": "membrane"}), bears],
		"struck": [_row(wide, {"struck": true}), bears],
	}
	count(_found(case[0], case[1])) == 0
}

_moves_by(share) := _row({"movement": _figure(share, sprintf("%v", [share]), "%", "W", 12, "M12")}, {})

test_told_as_a_share if {
	bears := {"movement": _bears(0.25, "25 %")}
	{f.message | some f in _found(_moves_by(0.35), bears)} == {concat(" ", [
		"JS-3 (rubberized-asphalt-membrane) bears 25 % of the width each way;",
		"this joint moves 35 % each way",
	])}
	count(_found(_moves_by(0.25), bears)) == 0
	count(_found(_moves_by(0.35), {})) == 0
}
