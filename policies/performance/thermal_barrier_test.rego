package performance.thermal_barrier_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.performance.thermal_barrier

_foam := base.item("material", "F-8", "open-cell-spray-foam", "insulation", ["polyurethane-foam"])

_row(remark, more) := object.union(
	{
		"role": "insulation",
		"items": [_foam],
		"signals": [bench.signal("room_bare", "remark", "no thermal barrier")],
		"texts": {"remark": remark},
	},
	more,
)

_note := {"text": "Foam gets a thermal barrier", "at": {"sheet": "N", "row": 3, "cell": "A3"}}

_found(line, notes) := found if {
	doc := object.union(bench.document([bench.sheet(line)], [], []), {"project": {"notes": notes}})
	found := thermal_barrier.findings with input as doc
}

test_fires_in_full if {
	{[f.message, f.cells] | some f in _found(_row("no thermal barrier", {}), [_note])} == {[
		concat(" ", [
			"F-8 (open-cell-spray-foam) is bare toward the room (\"no thermal barrier\");",
			"the notes ask for a thermal barrier",
		]),
		["C12", "M12"],
	]}
}

test_without_a_note if count(_found(_row("no thermal barrier", {}), [])) == 1

test_silent[name] if {
	wool := base.item("material", "B-2", "mineral-wool", "insulation", ["mineral-fiber"])
	some name, line in {
		"wool": _row("no thermal barrier", {"items": [wool]}),
		"tested without": _row("no thermal barrier, NFPA 286 report for bare foam", {}),
		"denied": _row("", {"signals": [bench.denial("room_bare", "remark", "never left bare")]}),
		"struck": _row("no thermal barrier", {"struck": true}),
		"nothing told": _row("", {"signals": []}),
	}
	count(_found(line, [_note])) == 0
}
