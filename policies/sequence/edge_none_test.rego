package sequence.edge_none_test

import data.lib.season_bench_test as bench
import data.sequence.edge_none

_note := bench.limit("termination", {"text": "Every edge sealed"})

_others(text) := [object.union(bench.sheet({"texts": {"edge": text}}), {"id": sprintf("W!%d", [n]), "row": n}) |
	some n in [20, 21, 22]
]

_found(line, others, limits) := found if {
	doc := bench.with_notes(bench.document(array.concat([bench.sheet(line)], others), [], []), limits, [])
	found := edge_none.findings with input as doc
}

test_whole_finding if {
	_found({"texts": {"edge": "None"}}, _others("bar at top"), []) == {{
		"line": "W!12",
		"cells": ["O12"],
		"message": concat(" ", [
			`The edge of FM-1 (rubberized-asphalt-membrane) has no termination (the cell says "None"), and the other`,
			"sheets of the table have one",
		]),
		"severity": "warning",
		"related": [],
	}}
}

test_severity[name] if {
	some name, tc in {
		"loose": {"line": {"texts": {"edge": "Loose, top"}}, "limits": [], "want": {"warning"}},
		"none, with a note": {"line": {"texts": {"edge": "none"}}, "limits": [_note], "want": {"error"}},
		"none, and how": {"line": {"texts": {"edge": "NONE - cut edge"}}, "limits": [], "want": {"warning"}},
		"nonesuch bar": {"line": {"texts": {"edge": "no. 3 bar"}}, "limits": [], "want": set()},
		"a dash, with a note": {"line": {"texts": {"edge": "-"}}, "limits": [_note], "want": {"note"}},
		"a dash": {"line": {"texts": {"edge": "-"}}, "limits": [], "want": set()},
		"empty": {"line": {"texts": {"edge": ""}}, "limits": [], "want": set()},
		"no edge column": {"line": {}, "limits": [_note], "want": set()},
		"a bar": {"line": {"texts": {"edge": "bar"}}, "limits": [_note], "want": set()},
		"closed in the remark": {
			"line": {"texts": {"edge": "none"}, "signals": [bench.signal("edge_sealed", "remark", "bar at top")]},
			"limits": [_note],
			"want": set(),
		},
		"told as open": {
			"line": {"texts": {"edge": "none"}, "signals": [bench.signal("edge_open", "edge", "none at top")]},
			"limits": [_note],
			"want": set(),
		},
	}
	{f.severity | some f in _found(tc.line, _others("bar at top"), tc.limits)} == tc.want
}

test_most_rows_must_have_one if {
	count(_found({"texts": {"edge": "none"}}, _others("-"), [])) == 0
	count(_found({"texts": {"edge": "none"}}, array.slice(_others("bar"), 0, 2), [])) == 0
}

# A liquid has no edge; a strip of sheet beside it has one.
test_liquid_has_no_edge[key] if {
	some key, want in {"liquid-flashing": 0, "fluid-applied-acrylic-air-barrier": 0, "butyl-flashing-tape": 1}
	brushed := bench.sheet({"texts": {"edge": "none"}, "items": [bench.item_of("material", "FM-7", "membrane")]})
	row := object.union(brushed, {"items": [object.union(brushed.items[0], {"keys": [key]})]})
	count(edge_none.findings) == want with input as bench.document(array.concat([row], _others("bar at top")), [], [])
}

# The legs of a coping close the sheet below it, unless a note asks for every edge; a sheet that ends below it is open.
test_coping_closes[place] if {
	some place, want in {
		"Below prefin. zinc coping": {"alone": 0, "noted": 1},
		"Underlayment of parapet, under the prefinished steel cap": {"alone": 0, "noted": 1},
		"Parapet, back face": {"alone": 1, "noted": 1},
		"Under window sill": {"alone": 1, "noted": 1},
	}
	line := {"texts": {"edge": "none"}, "place": place}
	count(_found(line, _others("bar at top"), [])) == want.alone
	count(_found(line, _others("bar at top"), [_note])) == want.noted
}

# A sheet on the top of a parapet with a coping beside it lies under that; one on its face ends below it.
test_coping_on_the_top[bed] if {
	some bed, want in {
		"plywood, top of parapet": {"alone": 0, "noted": 1},
		"plywood, parapet face": {"alone": 1, "noted": 1},
	}
	line := {"texts": {"edge": "none", "substrate": bed, "touches": "zinc coping; brick"}, "place": ""}
	count(_found(line, _others("bar at top"), [])) == want.alone
	count(_found(line, _others("bar at top"), [_note])) == want.noted
}

# The cell of the edge itself may say that a coping lies over it.
test_coping_told_at_the_edge[edge] if {
	some edge, want in {
		"none - lies under the coping": {"alone": 0, "noted": 1},
		"None, beneath the metal cap": {"alone": 0, "noted": 1},
		"none - cut at 100": {"alone": 1, "noted": 1},
		"none - stops at the sill": {"alone": 1, "noted": 1},
	}
	count(_found({"texts": {"edge": edge}}, _others("bar at top"), [])) == want.alone
	count(_found({"texts": {"edge": edge}}, _others("bar at top"), [_note])) == want.noted
}
