package pairing.wood_moisture_test

import data.lib.bench_test as bench
import data.pairing.wood_moisture

_note := {
	"kind": "wood_moisture",
	"min": null,
	"max": 0.16,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "wood 16 % at most",
	"at": {"sheet": "Notes", "row": 7, "cell": "B7"},
}

_found(bed, share, limits) := found if {
	doc := bench.schedule([bench.sbs, bed], {"figures": {"wood_moisture": {"min": share, "max": share, "text": "x"}}}, [])
	found := wood_moisture.findings with input as object.union(doc, {"project": {"limits": limits, "signals": []}})
}

test_over_the_notes_is_an_error if {
	some f in _found(bench.plywood, 0.18, [_note])
	f.severity == "error"
	endswith(f.message, "at 18% moisture; the notes allow 16%")
	count(f.related) == 1
}

test_over_the_usual_is_a_warning if {
	some f in _found(bench.plywood, 0.26, [])
	f.severity == "warning"
}

test_silent[name] if {
	some name, case in {
		"on the limit of the notes": {"bed": bench.plywood, "share": 0.16, "limits": [_note]},
		"on the usual limit": {"bed": bench.plywood, "share": 0.19, "limits": []},
		"not wood": {"bed": bench.concrete, "share": 0.4, "limits": [_note]},
	}
	count(_found(case.bed, case.share, case.limits)) == 0
}

# Notes that give a most for each kind of bed: a row is held to that of its own, and other beds to one that names them.
test_each_bed_by_its_own_note[name] if {
	limits := [
		object.union(_note, {"keys": ["wood"], "max": 0.18}),
		object.union(_note, {"keys": ["cement-based"], "max": 0.05, "text": "concrete 5 %"}),
	]
	some name, case in {
		"wood within its own": {"bed": bench.plywood, "share": 0.17, "count": 0},
		"wood over its own": {"bed": bench.plywood, "share": 0.185, "count": 1},
		"concrete over its own": {"bed": bench.concrete, "share": 0.06, "count": 1},
		"concrete on its own": {"bed": bench.concrete, "share": 0.05, "count": 0},
	}
	found := _found(case.bed, case.share, limits)
	count(found) == case.count
}

# A limit for what else is laid over the bed asks nothing of this sheet.
test_a_limit_by_what_is_laid_over_it[name] if {
	some name, case in {
		"for this sheet": {"over": ["rubberized-asphalt-membrane"], "count": 1},
		"for all": {"over": [], "count": 1},
		"for a liquid": {"over": ["liquid-flashing"], "count": 0},
	}
	limit := object.union(_note, {"keys": ["cement-based"], "max": 0.05, "over": case.over})
	count(_found(bench.concrete, 0.06, [limit])) == case.count
}
