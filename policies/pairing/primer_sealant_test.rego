package pairing.primer_sealant_test

import data.lib.bench_test as bench
import data.pairing.primer_sealant

_bead := bench.own(bench.item("material", "JS-1", "polyurethane-sealant", "sealant", ["polyurethane"]))

_brick := bench.item("touches", "brick", "clay-brick", "masonry", ["porous-masonry"])

_rod := bench.item("touches", "rod", "closed-cell-backer-rod", "separator", ["porous-masonry"])

_product := bench.product("JS-1", {"accepts": [
	bench.accepts("stone, brick", ["porous-masonry"], "listed", ["JP-1"]),
	bench.accepts("aluminum", ["metal"], "none", []),
	bench.accepts("plywood", ["osb-plywood-sheathing"], "always", []),
]})

_found(items, more) := found if {
	line := object.union({"role": "sealant", "texts": {"primer": "none"}}, more)
	found := primer_sealant.findings with input as bench.schedule(items, line, [_product])
}

test_fires if {
	_found([_bead, bench.concrete, _brick], {}) == {{
		"line": "W!12",
		"cells": ["C12", "F12"],
		"message": concat("", [
			`JS-1 (polyurethane-sealant) goes on CIP curb and brick without primer (the primer cell says "none"), `,
			"but its data asks for JP-1 there",
		]),
		"related": [{"product": "JS-1", "cells": ["I4"], "what": "its data on primers"}],
		"facts": ["W!12/JS-1", "W!12/CIP curb", "W!12/brick"],
	}}
}

test_face_in_a_remark if {
	brick := object.union(_brick, {"slot": "remark"})
	count(_found([_bead, brick], {})) == 1
}

test_silent[name] if {
	some name, case in {
		"primer is named": [[_bead, _brick, bench.solvent_primer], {}],
		"a face that needs none": [[_bead, bench.angle], {}],
		"no primer is named for it": [[_bead, bench.plywood], {}],
		"rod behind the bead": [[_bead, _rod], {}],
		"the cell is empty": [[_bead, _brick], {"texts": {"primer": ""}}],
		"no sealant": [[_bead, _brick], {"role": "membrane"}],
		"struck": [[_bead, _brick], {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}

# A joint of a schedule of joints, with a bead and no sheet; a sheet's own bead is judged with the sheet.
test_joint_with_a_bead_alone if {
	bead := object.union(_bead, {"slot": "sealant"})
	side := object.union(bench.concrete, {"slot": "left"})
	count(_found([bead, side], {"role": "other"})) == 1
	count(_found([bead, side], {"role": "other", "texts": {"primer": "JP-1"}})) == 0
	count(_found([bead, object.union(bench.angle, {"slot": "left"})], {"role": "other"})) == 0
	count(_found([bench.own(bench.sbs), bead, side], {"role": "membrane"})) == 0
}
