package pairing.immersed_test

import data.lib.season_bench_test as bench
import data.pairing.immersed

_found(place, says) := found if {
	line := bench.sheet({"items": [bench.own], "texts": {"place": place}})
	product := bench.product({"texts": {"keep_off": says}})
	found := immersed.findings with input as bench.document([line], [product], [])
}

test_whole_finding if {
	{f.message | some f in _found("Tank joints, submerged", "Not immersed; not on PVC")} == {concat("", [
		"FM-1 (rubberized-asphalt-membrane) stays under water there; its data says \"not immersed\"",
	])}
}

test_in_other_words if {
	every says in ["not for immersion", "Not suitable for continuous immersion", "never under water", "no immersion"] {
		count(_found("basin wall below water line", says)) == 1
	}
}

test_dry_places if {
	every place in ["Tank rim, not immersed", "coping above water line", "pool deck", ""] {
		count(_found(place, "Not immersed")) == 0
	}
}

test_data_that_bars_nothing if {
	every says in ["immersed, chlorinated", "not on PVC", ""] {
		count(_found("Tank joints, immersed", says)) == 0
	}
}
