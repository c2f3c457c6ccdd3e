package pairing.substrate_unlisted_test

import data.lib.bench_test as bench
import data.pairing.substrate_unlisted

_listed := [
	bench.accepts("glass-mat gypsum", ["glass-mat-gypsum-sheathing", "gypsum"], "none", []),
	bench.accepts("plywood", ["osb-plywood-sheathing", "wood"], "none", []),
]

_found(items, accepts) := found if {
	product := bench.product("FM-1", {"accepts": accepts})
	found := substrate_unlisted.findings with input as bench.schedule(items, {}, [product])
}

test_fires if {
	_found([bench.own(bench.sbs), bench.concrete], _listed) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": concat("", [
			"FM-1 (rubberized-asphalt-membrane) goes on CIP curb, ",
			"which its data does not list (glass-mat gypsum and plywood)",
		]),
		"related": [{"product": "FM-1", "cells": ["I4"], "what": "its data on substrates"}],
		"facts": ["W!12/FM-1", "W!12/CIP curb"],
	}}
}

test_silent[name] if {
	wood := bench.item("substrate", "nailer", "untreated-softwood", "lumber", ["wood"])
	lap := object.union(bench.permeable, {"slot": "substrate"})
	some name, case in {
		"listed": {"items": [bench.own(bench.sbs), bench.glass_mat], "accepts": _listed},
		"of the same kind": {"items": [bench.own(bench.sbs), wood], "accepts": _listed},
		"lap onto a sheet": {"items": [bench.own(bench.sbs), lap], "accepts": _listed},
		"metal": {"items": [bench.own(bench.sbs), bench.angle], "accepts": _listed},
		"not known": {
			"items": [bench.own(bench.sbs), bench.item("substrate", "wall", "", "", [])],
			"accepts": _listed,
		},
		"list not fully read": {
			"items": [bench.own(bench.sbs), bench.concrete],
			"accepts": array.concat(_listed, [bench.accepts("see chart", [], "unsaid", [])]),
		},
		"new concrete": {
			"items": [bench.own(bench.sbs), bench.item("substrate", "new wall", "fresh-mortar", "masonry", [
				"cement-based",
				"uncured-cement",
			])],
			"accepts": _listed,
		},
		"batts between the studs": {
			"items": [bench.own(bench.sbs), bench.item("substrate", "R-13 batts", "glass-fiber-insulation", "insulation", [])],
			"accepts": _listed,
		},
		"wool told of the studs": {
			"items": [bench.own(bench.sbs), object.union(
				bench.item("substrate", "wool", "mineral-wool", "insulation", []),
				{"signals": ["studs_filled"]},
			)],
			"accepts": _listed,
		},
		"no list": {"items": [bench.own(bench.sbs), bench.concrete], "accepts": []},
		"all": {
			"items": [bench.own(bench.sbs), bench.concrete],
			"accepts": [bench.accepts("all substrates", [], "unsaid", [])],
		},
	}
	count(_found(case.items, case.accepts)) == 0
}

test_word_of_the_list_that_was_not_read if {
	nailer := bench.item("substrate", "borate cap", "borate-lumber", "lumber", ["wood"])
	product := bench.product("FM-1", {
		"accepts": [bench.accepts("glass-mat gypsum", ["gypsum"], "none", [])],
		"texts": {"accepts": "glass-mat gypsum, ply"},
	})
	found := substrate_unlisted.findings with input as bench.schedule([bench.own(bench.sbs), nailer], {}, [product])
	count(found) == 0
}

test_masonry_covers_block if {
	masonry := [bench.accepts("masonry", ["porous-masonry"], "none", [])]
	count(_found([bench.own(bench.sbs), bench.block], masonry)) == 0
}

test_an_adhesive_is_no_face if {
	glue := object.union(bench.accepts("BA-3", [], "unsaid", []), {"products": ["BA-3"]})
	products := [bench.product("FM-1", {"accepts": [glue]}), bench.product("BA-3", {"role": "adhesive"})]
	found := substrate_unlisted.findings with input as bench.schedule([bench.own(bench.sbs), bench.concrete], {}, products)
	count(found) == 0
}

test_a_bead_that_it_is_set_in_is_no_face if {
	bead := object.union(bench.accepts("JS-2", [], "unsaid", []), {"products": ["JS-2"]})
	products := [bench.product("FM-1", {"accepts": [bead]}), bench.product("JS-2", {"role": "sealant"})]
	found := substrate_unlisted.findings with input as bench.schedule([bench.own(bench.sbs), bench.concrete], {}, products)
	count(found) == 0
}
