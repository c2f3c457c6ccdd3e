package contact.residue_test

import data.contact.residue
import data.lib.bench_test as bench

_rows := bench.pairs([bench.row("oil-or-wax-residue", "polyurethane", "incompatible", "adhesion-failure", "error")])

_bead := bench.end("sealant", "S-4", "polyurethane-sealant", "sealant", ["polyurethane"])

_oil := bench.end("touches", "form oil", "form-release-agent", "coating", ["oil-or-wax-residue"])

_below := object.union(_oil, {"slot": "substrate"})

_found(contacts) := found if {
	found := residue.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_bead, _oil, {})]) == {{
		"line": "W!12",
		"cells": ["G12", "H12"],
		"severity": "error",
		"message": "S-4 (polyurethane-sealant) goes on form oil, and nothing says that it comes off first",
		"related": [],
		"facts": ["S-4-form oil"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"taken off": bench.contact(_bead, _oil, {"kind": "apart", "signals": ["removed"]}),
		"under a sheet it is judged as substrate": bench.contact(bench.sheet, _below, {"from": "substrate"}),
	}
	count(_found([contact])) == 0
}
