package pairing.wet_surface_test

import data.lib.bench_test as bench
import data.pairing.wet_surface

_found(item, signals) := found if {
	found := wet_surface.findings with input as bench.schedule([item, bench.glass_mat], {"signals": signals}, [])
}

_wet := bench.said("surface_wet", "wet from snow, work carries on")

test_fires if {
	_found(bench.sbs, [_wet]) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": `FM-1 (rubberized-asphalt-membrane) goes on a wet face ("wet from snow, work carries on")`,
	}}
}

test_the_whole_cell_is_quoted if {
	more := {
		"texts": {"remark": "boards wet from snow, crew carries on"},
		"signals": [bench.said("surface_wet", "wet from")],
	}
	found := wet_surface.findings with input as bench.schedule([bench.sbs, bench.glass_mat], more, [])
	{f.message | some f in found} == {concat("", [
		"FM-1 (rubberized-asphalt-membrane) goes on a wet face ",
		`("boards wet from snow, crew carries on")`,
	])}
}

test_silent[name] if {
	some name, case in {
		"dry": {"item": bench.sbs, "signals": [bench.said("surface_dry", "dry")]},
		"wet and dried": {"item": bench.sbs, "signals": [_wet, bench.said("surface_dry", "dried")]},
		"the substrate cell says dry, another rule's": {"item": bench.sbs, "signals": [
			_wet,
			object.union(bench.said("surface_dry", "dry"), {"slot": "substrate"}),
		]},
		"not wet": {"item": bench.sbs, "signals": [object.union(_wet, {"no": true})]},
		"fluid": {"item": bench.fluid, "signals": [_wet]},
		"nothing said": {"item": bench.sbs, "signals": []},
	}
	count(_found(case.item, case.signals)) == 0
}
