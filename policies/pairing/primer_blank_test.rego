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
