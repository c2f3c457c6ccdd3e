package performance.joint_narrow_test

import data.lib.desk_test as desk
import data.performance.joint_narrow

_width(low, high) := object.union(
	desk.figure(low, sprintf("%v x %v mm", [high, low]), "mm"),
	{"max": high, "at": {"sheet": "W", "row": 12, "cell": "D12"}},
)

_row(low, high, more) := desk.row(12, "JS-3", object.union(
	{"role": "sealant", "figures": {"joint_mm": _width(low, high)}},
	more,
))

_asked(mm) := {
	"kind": "joint_width_mm",
	"min": mm,
	"max": null,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "Joints at least 8 mm wide.",
	"at": {"sheet": "N", "row": 4, "cell": "A4"},
}

_found(row, asked) := found if {
	doc := object.union(desk.document([row], [], []), {"project": {"limits": asked, "notes": []}})
	found := joint_narrow.findings with input as doc
}

test_fires_by_the_notes if {
	some f in _found(_row(4, 4, {}), [_asked(8)])
	f.severity == "error"
	contains(f.message, "goes into a joint 4")
	contains(f.message, "the notes ask for at least 8")
	"D12" in f.cells
	f.related[0].what == "Joints at least 8 mm wide."
}

test_without_a_note if {
	{f.severity | some f in _found(_row(3, 3, {}), [])} == {"warning"}
}

test_silent[name] if {
	some name, case in {
		"as wide as asked": [_row(6, 8, {}), [_asked(8)]],
		"a quarter inch": [_row(6.35, 6.35, {}), []],
		"a bed under metal": [_row(3, 3, {"texts": {"remark": "bedding bead in the lap"}}), []],
		"does not move": [_row(3, 3, {"texts": {"remark": "non-moving joint"}}), []],
		"a sheet": [_row(3, 3, {"role": "membrane"}), []],
		"struck": [_row(3, 3, {"struck": true}), []],
		"no width": [object.remove(_row(3, 3, {}), ["figures"]), []],
	}
	count(_found(case[0], case[1])) == 0
}
