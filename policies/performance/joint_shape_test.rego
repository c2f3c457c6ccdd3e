package performance.joint_shape_test

import data.lib.desk_test as desk
import data.performance.joint_shape

_figure(low, high, text, cell) := object.union(
	desk.figure(low, text, "mm"),
	{"max": high, "at": {"sheet": "W", "row": 12, "cell": cell}},
)

_bead(width, depth) := {
	"joint_mm": _figure(width, width, sprintf("%v mm", [width]), "M12"),
	"joint_depth_mm": _figure(depth, depth, sprintf("%v mm", [depth]), "M12"),
}

_row(figures, more) := desk.row(12, "JS-3", object.union({"role": "sealant", "figures": figures}, more))

_asked(kind, mm) := {
	"kind": kind,
	"min": null,
	"max": mm,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "Depth half of the width, 12 mm max.",
	"at": {"sheet": "N", "row": 4, "cell": "A4"},
}

_found(row, asked) := found if {
	doc := object.union(desk.document([row], [], []), {"project": {"limits": asked, "notes": []}})
	found := joint_shape.findings with input as doc
}

test_fires_in_full if {
	_found(_row(_bead(20, 20), {}), []) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"JS-3 (rubberized-asphalt-membrane) is 20 mm deep in a joint 20 mm wide;",
			"half of the width is usual",
		]),
		"severity": "warning",
		"related": [],
	}}
}

test_by_the_notes if {
	[f.severity | some f in _found(_row(_bead(40, 16), {}), [_asked("joint_depth_mm", 12)])] == ["error"]
	[f.severity | some f in _found(_row(_bead(12, 10), {}), [_asked("joint_half", null)])] == ["error"]
}

test_by_two_sizes if {
	count(_found(_row({"joint_mm": _figure(20, 20, "20 x 20 mm", "D12")}, {}), [])) == 1
	count(_found(_row({"joint_mm": _figure(10, 20, "20 x 10 mm", "D12")}, {}), [])) == 0
	count(_found(_row({"joint_mm": _figure(20, 20, "20 mm", "D12")}, {}), [])) == 0
}

test_silent[name] if {
	some name, case in {
		"half": [_row(_bead(20, 10), {}), [_asked("joint_half", null), _asked("joint_depth_mm", 12)]],
		"narrow": [_row(_bead(12, 12), {}), []],
		"least depth in a narrow joint": [_row(_bead(8, 6), {}), [_asked("joint_half", null)]],
		"at the most": [_row(_bead(25, 12), {}), [_asked("joint_depth_mm", 12)]],
		"does not move": [_row(_bead(20, 20), {"texts": {"remark": "non-moving joint"}}), []],
		"a membrane": [_row(_bead(20, 20), {"role": "membrane"}), []],
		"struck": [_row(_bead(20, 20), {"struck": true}), []],
		"no depth": [_row({"joint_mm": _figure(20, 20, "20 mm", "M12")}, {}), []],
	}
	count(_found(case[0], case[1])) == 0
}
