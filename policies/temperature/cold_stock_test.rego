package temperature.cold_stock_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.temperature.cold_stock

_latex := base.item("material", "FL-3", "fluid-applied-acrylic-air-barrier", "membrane", ["acrylic", "water-borne"])

_froze := {
	"items": [object.union(_latex, {"product": "FL-3"})],
	"signals": [bench.signal("stock_frozen", "remark", "pails froze in the van")],
	"texts": {"remark": "pails froze in the van"},
}

_cold := {
	"signals": [bench.signal("stock_cold", "remark", "rolls left on the deck overnight")],
	"texts": {"remark": "rolls left on the deck overnight"},
}

_found(more, products, frost) := found if {
	windows := [bench.window([], {"night_frost": frost})]
	found := cold_stock.findings with input as bench.document([bench.sheet(more)], products, windows)
}

test_froze_in_full if {
	_found(_froze, [base.product("FL-3", {"signals": [base.said("keep_from_freezing", "do not freeze")]})], 0) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat(" ", [
			"FL-3 (fluid-applied-acrylic-air-barrier) froze before it was used (\"pails froze in the van\");",
			"its data says to keep it from frost",
		]),
		"severity": "error",
		"related": [{"product": "FL-3", "cells": [], "what": "its data on frost"}],
	}}
}

test_froze_without_data if {
	{f.severity | some f in _found(_froze, [], 0)} == {"warning"}
}

test_rolls_in_the_cold if {
	{f.message | some f in _found(_cold, [], 0.9)} == {
		"FM-1 (rubberized-asphalt-membrane) is kept in the cold before it goes on (\"rolls left on the deck overnight\")",
	}
}

test_silent[name] if {
	some name, tc in {
		"solvent-borne": [object.union(_froze, {"items": [bench.fm_1]}), 0.9],
		"sent back": [object.union(_froze, {"texts": {"remark": "pails froze in the van, replaced"}}), 0.9],
		"denied": [object.union(_froze, {"signals": [bench.denial("stock_frozen", "remark", "never froze")]}), 0.9],
		"rolls in a mild season": [_cold, 0.2],
		"a board in the cold": [object.union(_cold, {"items": [base.item("material", "B-1", "xps", "insulation", [])]}), 0.9],
		"struck": [object.union(_cold, {"struck": true}), 0.9],
	}
	count(_found(tc[0], [], tc[1])) == 0
}
