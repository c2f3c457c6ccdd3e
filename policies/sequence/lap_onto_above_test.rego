package sequence.lap_onto_above_test

import data.lib.season_bench_test as bench
import data.sequence.lap_onto_above

_upper := object.union(bench.sheet({"mark": "B-02"}), {"id": "W!13", "row": 13})

_found(texts) := found if {
	lower := bench.sheet({"mark": "B-01", "texts": texts})
	found := lap_onto_above.findings with input as bench.document([lower, _upper], [], [])
}

test_fires if {
	{f.message | some f in _found({"top": "AVB1 B-02", "edge": "laps 100 over the face of B-02"})} == {concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) laps over B-02, which the row says is above it",
		`("laps 100 over the face of B-02")`,
	])}
}

test_silent[name] if {
	some name, texts in {
		"laps under": {"top": "AVB1 B-02", "edge": "laps 100 under the face of B-02"},
		"the upper laps over it": {"top": "AVB1 B-02", "edge": "B-02 laps 100 over its face"},
		"over another": {"top": "AVB1 B-02", "edge": "laps 100 over the face of B-09"},
		"above and below": {"top": "AVB1 B-02", "bottom": "B-02", "edge": "laps over B-02"},
		"nothing above": {"edge": "laps over the face of B-02"},
	}
	count(_found(texts)) == 0
}
