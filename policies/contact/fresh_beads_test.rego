package contact.fresh_beads_test

import data.contact.fresh_beads
import data.lib.bench_test as bench

_urethane := bench.end("material", "S-2", "polyurethane-sealant", "sealant", ["polyurethane"])

_silicone := bench.end("touches", "S-9", "neutral-silicone-sealant", "sealant", ["silicone"])

_found(a, b, kind, signals) := found if {
	doc := object.union(
		bench.schedule([bench.sbs], {"role": "sealant", "signals": signals}, []),
		{"contacts": [bench.contact(a, b, {"kind": kind})]},
	)
	found := fresh_beads.findings with input as doc
}

_fresh := bench.said("bead_fresh", "the same hour")

test_fires if {
	_found(_urethane, _silicone, "direct", [_fresh]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"message": concat("", [
			"S-2 (polyurethane-sealant) meets S-9 (neutral-silicone-sealant) while both are fresh, ",
			"and they keep each other from curing",
		]),
		"facts": ["S-2-S-9"],
	}}
}

test_silent[name] if {
	acrylic := bench.end("touches", "S-5", "acrylic-latex-sealant", "sealant", ["acrylic"])
	strip := bench.end("touches", "ST-1", "silicone-transition-strip", "membrane", ["silicone"])
	some name, found in {
		"cured": _found(_urethane, _silicone, "direct", [_fresh, object.union(_fresh, {"no": true})]),
		"nothing said": _found(_urethane, _silicone, "direct", []),
		"apart": _found(_urethane, _silicone, "separated", [_fresh]),
		"another sealant": _found(_urethane, acrylic, "direct", [_fresh]),
		"a cured strip": _found(_urethane, strip, "direct", [_fresh]),
	}
	count(found) == 0
}
