package pairing.parge_first_test

import data.lib.bench_test as bench
import data.pairing.parge_first

_split := object.union(bench.block, {"text": "split-face CMU"})

_found(items, products) := found if {
	found := parge_first.findings with input as bench.schedule(items, {}, products)
}

test_fires if {
	_found([bench.sbs, _split], []) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": "Asphaltic sheet FM-1 goes straight on split-face CMU, which such a sheet bridges; no parging is shown",
	}}
}

test_silent_on_plain_block if count(_found([bench.sbs, bench.block], [])) == 0

test_silent_where_its_data_speaks if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("CMU", ["concrete-masonry"], "always", [])]})
	count(_found([bench.own(bench.sbs), _split], [product])) == 0
}

test_silent_for_fluid if count(_found([bench.fluid, _split], [])) == 0

_raked(substrate, remark, notes) := count(found) if {
	doc := bench.schedule([bench.fluid, bench.block], {"texts": {"substrate": substrate, "remark": remark}}, [])
	found := parge_first.findings with input as object.union(doc, {"project": {"notes": [
	{"text": text, "at": {"sheet": "N", "row": 2, "cell": "A2"}} |
		some text in notes
	]}})
}

test_joints_not_flush[name] if {
	asked := ["Block: mortar joints cut flush before the barrier goes on."]
	some name, case in {
		"raked": ["Block, raked joints 8 mm", "", asked, 1],
		"not filled": ["Block, jts. not filled", "", asked, 1],
		"filled since": ["Block, raked joints", "parged flush 2 May", asked, 0],
		"flush": ["Block, joints flush", "", asked, 0],
		"brick in front": ["Block, joints flush", "brick tooled concave", asked, 0],
		"nobody asks": ["Block, raked joints", "", ["Brick: weep joints open."], 0],
	}
	_raked(case[0], case[1], case[2]) == case[3]
}
