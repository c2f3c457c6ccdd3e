package data.surface_contradiction_test

import data.data.surface_contradiction
import data.lib.bench_test as bench

_found(signals) := found if {
	found := surface_contradiction.findings with input as bench.schedule(
		[bench.sbs, bench.glass_mat],
		{"signals": signals, "texts": {"remark": "wet from hose test", "substrate": "glass mat, dry"}},
		[],
	)
}

_wet := bench.said("surface_wet", "wet from")

_dry := object.union(bench.said("surface_dry", "DRY"), {"slot": "substrate"})

test_fires if {
	{f.message | some f in _found([_wet, _dry])} == {concat("", [
		"the substrate cell says the face is dry, ",
		"and the remark says it is wet (\"wet from hose test\")",
	])}
}

test_silent[name] if {
	some name, signals in {
		"dried in the remark": [_wet, _dry, bench.said("surface_dry", "dried by fan")],
		"wet only": [_wet],
		"dry only": [_dry],
		"not wet": [object.union(_wet, {"no": true}), _dry],
		"wet told in the substrate cell": [object.union(_wet, {"slot": "substrate"}), _dry],
	}
	count(_found(signals)) == 0
}
