package pairing.primer_blank_test

import data.lib.bench_test as bench
import data.pairing.primer_blank

_product := bench.product("FM-1", {"accepts": [bench.accepts("block", ["concrete-masonry"], "always", [])]})

_found(items, more) := found if {
	found := primer_blank.findings with input as bench.schedule(items, more, [_product])
}

test_fires if {
	_found([bench.own(bench.sbs), bench.block], {}) == {{
		"line": "W!12",
		"cells": ["C12", "E12", "F12"],
		"message": concat("", [
			"No primer is given for FM-1 (rubberized-asphalt-membrane) on CMU, ",
			"where its data asks for a primer",
		]),
		"related": [{"product": "FM-1", "cells": ["I4"], "what": "its data on substrates and primers"}],
		"facts": ["W!12/FM-1", "W!12/CMU"],
	}}
}

test_silent[name] if {
	some name, more in {
		"said none is another finding": {"texts": {"primer": "none"}},
		"dated": {"dates": {"prime": {"state": "day"}}},
		"words not understood": {"texts": {"primer": "by others"}},
	}
	count(_found([bench.own(bench.sbs), bench.block], more)) == 0
}

test_silent_without_a_primer_column if {
	doc := bench.schedule([bench.own(bench.sbs), bench.block], {}, [_product])
	lines := [object.union(object.remove(line, ["cells"]), {"cells": {"material": "C12"}}) | some line in doc.lines]
	bare := object.union(doc, {"lines": lines, "reading": {"tables": []}})
	found := primer_blank.findings with input as bare
	count(found) == 0
}

_listing := bench.product("FM-1", {"accepts": [bench.accepts("block", ["concrete-masonry"], "listed", ["P-1", "P-2"])]})

test_left_open[cell] if {
	some cell, n in {
		"per manufacturer": 1,
		"mfr's std": 1,
		"as recommended": 1,
		"TBD": 1,
		"TBC with roofer": 1,
		"to be advised by the applicator": 1,
		"TBD, see SK-4": 0,
		"by roofer": 0,
		"per detail 4": 0,
	}
	row := bench.schedule([bench.own(bench.sbs), bench.block], {"texts": {"primer": cell}}, [_listing])
	found := primer_blank.findings with input as row
	count([f | some f in found; f.severity == "warning"]) == n
}

test_left_open_where_none_is_named if {
	count(_found([bench.own(bench.sbs), bench.block], {"texts": {"primer": "per maker"}})) == 0
}

# The word itself in a remark names no primer; a tag in it does.
test_left_open_beside_a_remark[item.text] if {
	word := bench.item("remark", "primer", "primer-unspecified", "primer", [])
	named := object.union(bench.item("remark", "P-1", "solvent-primer", "primer", ["solvent-borne"]), {"product": "P-1"})
	some item, n in {word: 1, named: 0}
	row := bench.schedule([bench.own(bench.sbs), bench.block, item], {"texts": {"primer": "per maker"}}, [_listing])
	found := primer_blank.findings with input as row
	count(found) == n
}

# A primer that is left to somebody else is no primer in this row; words of who puts on a primer that is named are.
test_left_to_others[cell] if {
	some cell, n in {
		"by others": 1,
		"Primer by other trades": 1,
		"N.I.C.": 1,
		"by owner": 1,
		"by others, P-1": 0,
		"by hand": 0,
		"nicotine free": 0,
	}
	row := bench.schedule([bench.own(bench.sbs), bench.block], {"texts": {"primer": cell}}, [_listing])
	found := primer_blank.findings with input as row
	count([f | some f in found; f.severity == "warning"]) == n
}

# The data of the sheet asks for nothing, and that of a primer is for the sheet.
_made := {
	"id": "P-7",
	"tag": "P-7",
	"role": "primer",
	"cells": {},
	"texts": {},
	"figures": {},
	"suits": [{"text": "FM-1", "keys": [], "products": ["FM-1"], "except": false}],
}

_steel := object.union(bench.own(bench.sbs), {
	"family": "stainless-sheet",
	"class": "flashing-metal",
	"keys": ["metal"],
})

test_primer_that_is_made_for_it[cell] if {
	some cell, n in {"?": 1, "TBD": 1, "??": 1, "P-7?": 0, "by others": 1, "none": 0}
	row := bench.schedule([_steel, bench.block], {"texts": {"primer": cell}}, [bench.product("FM-1", {}), _made])
	found := primer_blank.findings with input as row
	count([f | some f in found; contains(f.message, "and P-7 is made for it")]) == n
}

test_primer_that_is_made_for_another if {
	other := object.union(_made, {"suits": [{"text": "X", "keys": [], "products": ["FM-9"], "except": false}]})
	row := bench.schedule([_steel, bench.block], {"texts": {"primer": "?"}}, [bench.product("FM-1", {}), other])
	count(primer_blank.findings) == 0 with input as row
	metal := bench.schedule([_steel, bench.angle], {"texts": {"primer": "?"}}, [bench.product("FM-1", {}), _made])
	count(primer_blank.findings) == 0 with input as metal
}
