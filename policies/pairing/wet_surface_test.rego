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

_fluid_with(texts, signals) := found if {
	product := bench.product("FA-1", {"texts": texts, "cells": {"remark": "L7"}})
	found := wet_surface.findings with input as bench.schedule(
		[bench.own(bench.fluid), bench.block],
		{"signals": signals},
		[product],
	)
}

test_fluid_whose_data_asks_for_a_dry_face if {
	_fluid_with({"type": "coating", "remark": "Surface clean and dry"}, [_wet]) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat("", [
			`FA-1 (fluid-applied-acrylic-air-barrier) goes on a wet face ("wet from snow, work carries on"); `,
			`its data says "Surface clean and dry"`,
		]),
		"related": [{"product": "FA-1", "cells": ["L7"], "what": "its data"}],
	}}
}

test_fluid_kept_off_damp if {
	count(_fluid_with({"keep_off": "moist masonry"}, [_wet])) == 1
	count(_fluid_with({"keep_off": "moist masonry"}, [])) == 0
}

test_fluid_silent[name] if {
	some name, case in {
		"its data allows damp": {"texts": {"remark": "goes on damp block"}, "signals": [_wet]},
		"damp is fine": {"texts": {"remark": "masonry, damp OK (no standing water)"}, "signals": [_wet]},
		"dry film is no dry face": {"texts": {"thickness": "40 mil dry"}, "signals": [_wet]},
		"not wet": {"texts": {"remark": "dry only"}, "signals": []},
		"wet and dried": {"texts": {"remark": "dry only"}, "signals": [_wet, bench.said("surface_dry", "dried")]},
	}
	count(_fluid_with(case.texts, case.signals)) == 0
}

# Water of a wash on a day that is told is asked about by the days.
test_washed_on_a_day if {
	hosed := {"signals": [bench.said("surface_wet", "hosed down")]}
	dated := object.union(hosed, {"spans": {"drying_days": {"min": 9, "max": 9, "last": 9, "from": "2026-10-03"}}})
	count(wet_surface.findings) == 0 with input as bench.schedule([bench.sbs, bench.block], dated, [])
	count(wet_surface.findings) == 1 with input as bench.schedule([bench.sbs, bench.block], hosed, [])
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
