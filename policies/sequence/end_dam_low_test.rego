package sequence.end_dam_low_test

import data.lib.season_bench_test as bench
import data.sequence.end_dam_low

_note := {
	"kind": "end_dam_mm",
	"min": 25.4,
	"max": null,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "End dams 1 in. min.",
	"at": {"sheet": "Notes", "row": 7, "cell": "B7"},
}

_found(mm, limits) := found if {
	line := bench.sheet({"figures": {"end_dam_mm": bench.figure(mm, mm, "1/4 in", "in")}})
	found := end_dam_low.findings with input as object.union(
		bench.document([line], [], []),
		{"project": {"limits": limits, "signals": []}},
	)
}

test_fires if {
	some f in _found(6.35, [_note])
	contains(f.message, " has end dams of 1/4 in; the notes ask for 1 in")
	count(f.related) == 1
}

test_silent[name] if {
	some name, case in {
		"on the limit": {"mm": 25.4, "limits": [_note]},
		"higher": {"mm": 50, "limits": [_note]},
		"no note": {"mm": 6.35, "limits": []},
	}
	count(_found(case.mm, case.limits)) == 0
}

# The leg that a through-wall flashing turns up the wall, and a flashing elsewhere.
test_rear_leg[name] if {
	note := object.union(_note, {"kind": "upturn_mm", "min": 200, "scope": "through-wall", "text": "TWF 200 up"})
	some name, case in {
		"low": {"mm": 150, "type": "Through-wall flashing", "count": 1},
		"on the limit": {"mm": 200, "type": "Through-wall flashing", "count": 0},
		"a sill pan": {"mm": 50, "type": "Sill pan", "count": 0},
	}
	leg := object.union(bench.figure(case.mm, case.mm, "6 up", "mm"), {"at": {"cell": "I9"}})
	line := bench.sheet({"place": case.type, "figures": {"upturn_mm": leg}})
	found := end_dam_low.findings with input as object.union(
		bench.document([line], [], []),
		{"project": {"limits": [note], "signals": []}},
	)
	count(found) == case.count
	every f in found {
		contains(f.message, " has a rear leg of 6 up; the notes ask for 200 mm")
		"I9" in f.cells
	}
}
