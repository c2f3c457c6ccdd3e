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
