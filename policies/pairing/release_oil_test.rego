package pairing.release_oil_test

import data.lib.bench_test as bench
import data.pairing.release_oil

_found(signals) := found if {
	found := release_oil.findings with input as bench.schedule([bench.sbs, bench.concrete], {"signals": signals}, [])
}

test_fires if {
	_found([bench.said("release_oil", "form oil")]) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"severity": "warning",
		"message": concat("", [
			`FM-1 (rubberized-asphalt-membrane) goes on an oily face ("form oil"), `,
			"and nothing says that the oil comes off",
		]),
		"related": [],
	}}
}

test_left_on_is_an_error if {
	found := _found([bench.said("release_oil", "bond breaker"), bench.said("left_on", "not cleaned")])
	{f.severity | some f in found} == {"error"}
}

test_silent_when_washed if {
	count(_found([bench.said("release_oil", "form oil"), bench.said("removed", "washed off")])) == 0
}

test_silent_when_denied if {
	count(_found([object.union(bench.said("release_oil", "no form oil"), {"no": true})])) == 0
}

# The sheet that lies on the oil is a second one of the row: its contact is told, and not hushed.
test_silent_where_the_contact_is_told if {
	oil := bench.end("substrate", "form oil", "form-release-agent", "coating", ["oil-or-wax-residue"])
	sheet := bench.end("behind", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic"])
	doc := object.union(
		bench.schedule([bench.sbs, bench.concrete], {"signals": [bench.said("release_oil", "form oil")]}, []),
		{"contacts": [bench.contact(sheet, oil, {"from": "substrate"})]},
	)
	count(release_oil.findings) == 0 with input as doc
}

# The row's own sheet on oil is no contact that is told: this rule tells it.
test_fires_where_the_contact_is_hushed if {
	oil := bench.end("substrate", "form oil", "form-release-agent", "coating", ["oil-or-wax-residue"])
	sheet := bench.end("material", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic"])
	doc := object.union(
		bench.schedule([bench.sbs, bench.concrete], {"signals": [bench.said("release_oil", "form oil")]}, []),
		{"contacts": [bench.contact(sheet, oil, {"from": "substrate"})]},
	)
	count(release_oil.findings) == 1 with input as doc
}

# Wax is asked about where the sheet is stuck, and not where its bond was tested.
test_waxed if {
	{f.message | some f in _found([bench.said("waxed_face", "slick side out")])} == {
		`FM-1 (rubberized-asphalt-membrane) is stuck to a waxed face ("slick side out"), on which little holds`,
	}
}

test_waxed_and_tested if {
	count(_found([bench.said("waxed_face", "slick side out"), bench.said("adhesion_tested", "pull test")])) == 0
}
