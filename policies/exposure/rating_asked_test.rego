package exposure.rating_asked_test

import data.exposure.rating_asked
import data.lib.desk_test as desk

_found(told, asked, more) := found if {
	product := desk.product("R-1", 4, {"figures": {"exposure_days": told}})
	figures := {"figures": {"min_exposure_days": desk.figure(asked, sprintf("%v", [asked]), "days")}}
	row := object.union(desk.row(12, "R-1", figures), more)
	found := rating_asked.findings with input as desk.document([row], [product], [])
}

_days(n) := desk.figure(n, sprintf("%v", [n]), "days")

test_fires_in_full if {
	_found(_days(60), 120, {}) == {{
		"line": "W!12",
		"cells": ["C12", "L12"],
		"message": "R-1 (rubberized-asphalt-membrane) is rated for 60 days in the sun, but the row asks for 120 days",
		"related": [{"product": "R-1", "cells": ["G4"], "what": "its data"}],
	}}
}

test_silent[name] if {
	some name, case in {
		"equal": [_days(120), {}],
		"more": [_days(180), {}],
		"no limit": [object.union(_days(0), {"min": null, "max": null, "no_limit": true}), {}],
		"struck": [_days(60), {"struck": true}],
	}
	count(_found(case[0], 120, case[1])) == 0
}

test_nothing_asked if {
	product := desk.product("R-1", 4, {"figures": {"exposure_days": _days(60)}})
	count(rating_asked.findings) == 0 with input as desk.document([desk.row(12, "R-1", {})], [product], [])
}
