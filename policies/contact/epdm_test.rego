package contact.epdm_test

import data.contact.epdm
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("epdm", "oil-exuding", "incompatible", "swelling", "warning"),
	bench.row("butyl", "epdm", "compatible", "none", "note"),
])

_found(contacts, products) := found if {
	found := epdm.findings with input as bench.document(contacts, products)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.sheet, bench.epdm, {})], []) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "EPDM boot is in contact with asphaltic sheet FM-1, with no separator shown",
		"related": [],
		"facts": ["FM-1-EPDM boot"],
	}}
}

test_oil_by_the_table if {
	caulk := bench.end("sealant", "oil caulk", "oleoresinous-caulk", "sealant", ["oil-exuding"])
	some f in _found([bench.contact(bench.epdm, caulk, {})], [])
	f.severity == "warning"
	f.message == "EPDM boot is in contact with oil caulk, with no separator shown"
}

test_silent[name] if {
	some name, contact in {
		"on butyl": bench.contact(bench.butyl, bench.epdm, {}),
		"in the glass pocket": bench.contact(bench.sheet, bench.epdm, {"signals": ["inside_pocket"]}),
		"clear of the sheet": bench.contact(bench.sheet, bench.epdm, {"kind": "near", "clear_mm": 22}),
		"felt is no sheet": bench.contact(
			bench.end("material", "felt", "asphalt-felt", "membrane", ["asphaltic", "moisture-holding"]),
			bench.epdm,
			{},
		),
	}
	count(_found([contact], [])) == 0
}

test_gasket_data_alone_bars if {
	gasket := object.union(bench.epdm, {"product": "G-1"})
	product := bench.product("G-1", {"keep_off": [bench.target("asphaltic sheets", ["asphaltic"], [])]})
	some f in _found([bench.contact(bench.sheet, gasket, {})], [product])
	endswith(f.message, `the data of G-1 says to keep off "asphaltic sheets"`)
}
