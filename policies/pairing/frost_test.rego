package pairing.frost_test

import data.lib.bench_test as bench
import data.pairing.frost

_found(signals) := found if {
	found := frost.findings with input as bench.schedule([bench.sbs, bench.block], {"signals": signals}, [])
}

_rime := bench.said("frost", "rime still in the joints")

test_fires if {
	_found([_rime]) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": `FM-1 (rubberized-asphalt-membrane) goes on a face with frost ("rime still in the joints")`,
	}}
}

test_silent[name] if {
	some name, signals in {
		"frost-free": [object.union(_rime, {"no": true})],
		"taken off": [_rime, bench.said("removed", "frost removed, board dried")],
		"frost in the air": [bench.said("frost", "air below freezing")],
		"nothing said": [],
	}
	count(_found(signals)) == 0
}
