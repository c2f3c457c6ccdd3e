package performance.insulation_figure_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.performance.insulation_figure

_board(clause) := object.union(bench.item("touches", "IW-2", "mineral-wool", "insulation", []), {
	"product": "IW-2",
	"clause": clause,
	"at": {"sheet": "W", "row": 12, "cell": "G12"},
})

_found(items, type) := found if {
	row := desk.row(12, "FL-2", {"items": array.concat([desk.own(12, "FL-2")], items)})
	doc := desk.document([row], [desk.product("IW-2", 8, {"texts": {"type": type}})], [])
	found := insulation_figure.findings with input as doc
}

test_fires_in_full if {
	_found([_board("IW-2 2 in., R-12")], "slag wool slab, R-4.2 per inch") == {{
		"line": "W!12",
		"cells": ["G12"],
		"message": "IW-2 (mineral-wool) is told to have R-12; 2 in. by its data has R-8.4",
	}}
}

test_found[clause] if {
	some clause, told in {
		"IW-2 2-1/2 in, R-10.5": 0,
		"IW-2 2-1/2 in, R-16": 1,
		"IW-2 1.5\" R6": 0,
		"IW-2 1.5\" R8": 1,
		"IW-2 3 in., R-13": 0,
		"IW-2 two layers 2 in., R-16.8": 0,
		"IW-2 3 in. + R-19 batt": 0,
		"IW-2 2 in., R-4.2 per in.": 0,
		"IW-2 1/2 in., R-12": 0,
		"IW-2, R-12": 0,
		"IW-2 2 in.": 0,
	}
	count(_found([_board(clause)], "slag wool slab, R-4.2/in.")) == told
}

# Nothing is computed without the resistance of an inch, nor of two boards in one breath.
test_silent if {
	count(_found([_board("IW-2 2 in., R-12")], "slag wool slab, R-8.4 at 2 in.")) == 0
	pair := "IW-2 and wool 2 in., R-12"
	count(_found([_board(pair), object.union(_board(pair), {"id": "W!12/9"})], "R-4.2 per inch")) == 0
}
