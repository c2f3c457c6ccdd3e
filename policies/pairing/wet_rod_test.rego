package pairing.wet_rod_test

import data.lib.bench_test as bench
import data.pairing.wet_rod

_bead := bench.item("material", "S-2", "polyurethane-sealant", "sealant", ["polyurethane"])

_rod := bench.item("touches", "open-cell rod", "open-cell-backer-rod", "separator", ["open-cell-backer"])

_found(rod, more) := found if {
	found := wet_rod.findings with input as bench.schedule([_bead, rod], object.union({"role": "sealant"}, more), [])
}

test_fires if {
	_found(_rod, {"texts": {"place": "Planter wall joint"}}) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"message": concat("", [
			"S-2 (polyurethane-sealant) is backed by open-cell rod where it stays wet, ",
			"and an open-cell rod drinks water",
		]),
	}}
}

test_fires_below_grade if {
	count(_found(_rod, {"signals": [bench.said("below_grade", "below grade")]})) == 1
}

test_silent[name] if {
	closed := bench.item("touches", "rod", "closed-cell-backer-rod", "separator", ["closed-cell-backer"])
	some name, found in {
		"above ground": _found(_rod, {"texts": {"place": "Window perimeter"}}),
		"closed cells": _found(closed, {"texts": {"place": "Planter wall joint"}}),
		"not used": _found(object.union(_rod, {"polarity": "no"}), {"texts": {"place": "Planter wall joint"}}),
		"no place": _found(_rod, {}),
		"a board": _found(_rod, {"role": "insulation", "texts": {"place": "Planter wall joint"}}),
	}
	count(found) == 0
}
