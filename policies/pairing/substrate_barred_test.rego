package pairing.substrate_barred_test

import data.lib.bench_test as bench
import data.pairing.substrate_barred

_not_foam := object.union(bench.accepts("not on foam", ["polystyrene"], "unsaid", []), {"except": true})

_found(items) := found if {
	product := bench.product("FM-1", {"accepts": [bench.accepts("concrete", ["cast-concrete"], "none", []), _not_foam]})
	found := substrate_barred.findings with input as bench.schedule(items, {}, [product])
}

test_fires if {
	_found([bench.own(bench.sbs), bench.foam]) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": "FM-1 (rubberized-asphalt-membrane) goes on I-1 edge, which its data rules out (not on foam)",
		"related": [{"product": "FM-1", "cells": ["I4"], "what": "its data on substrates"}],
		"facts": ["W!12/FM-1", "W!12/I-1 edge"],
	}}
}

test_silent_on_concrete if count(_found([bench.own(bench.sbs), bench.concrete])) == 0

test_silent_without_data if count(_found([bench.sbs, bench.foam])) == 0
