package temperature.dew_margin_test

import data.lib.desk_test as desk
import data.temperature.dew_margin

_at := {"sheet": "W", "row": 12, "cell": "M12"}

_read(value, text, unit) := object.union(desk.figure(value, text, unit), {"at": _at})

_surface := _read(3.33, "38F", "F")

_dew := object.union(_read(3.25, "of air at 42F and 85% RH", "°C"), {"assumed": true})

_margin(k) := object.union(_read(k, "surface 38F, dew point of air", "K"), {"assumed": true})

_found(figures, row) := found if {
	doc := desk.document([desk.row(12, "AB-1", object.union({"figures": figures}, row))], [], [])
	found := dew_margin.findings with input as doc
}

_set(surface, dew, k) := {"reading_surface_c": surface, "reading_dew_c": dew, "reading_margin_k": _margin(k)}

test_fires_in_full if {
	_found(_set(_surface, _dew, 0.08), {}) == {{
		"line": "W!12",
		"cells": ["M12"],
		"severity": "warning",
		"message": concat("", [
			"AB-1 (rubberized-asphalt-membrane) goes on a surface of 38 °F with the dew point at 38 °F; ",
			"a margin of 5 °F is asked for",
		]),
	}}
}

test_wet_is_an_error if desk.levels(_found(_set(_surface, _dew, -0.5), {})) == {"error"}

test_celsius if {
	some f in _found(_set(_read(4, "4 °C", "°C"), _read(3, "3 °C", "°C"), 1), {})
	endswith(f.message, "goes on a surface of 4 °C with the dew point at 3 °C; a margin of 3 K is asked for")
}

test_margin_told_alone if {
	some f in _found({"reading_margin_k": _read(1.11, "2 °F", "°F")}, {})
	endswith(f.message, "goes on a surface 2 °F above the dew point; a margin of 5 °F is asked for")
}

# 5 F is 2.78 K: enough for one who reads Fahrenheit, not for one who reads Celsius.
test_at_the_margin if {
	count(_found(_set(_surface, _dew, 2.78), {})) == 0
	count(_found(_set(_surface, _dew, 2.6), {})) == 1
	count(_found(_set(_read(6, "6 °C", "°C"), _dew, 2.78), {})) == 1
	count(_found(_set(_read(6, "6 °C", "°C"), _dew, 3), {})) == 0
}

test_silent[name] if {
	some name, case in {
		"no reading": {"figures": {}, "row": {}},
		"surface alone": {"figures": {"reading_surface_c": _surface}, "row": {}},
		"struck": {"figures": _set(_surface, _dew, 0.1), "row": {"struck": true}},
		"hybrid fluid": {"figures": _set(_surface, _dew, 0.1), "row": {"items": [object.union(
			desk.own(12, "FA-2"),
			{"keys": ["polyether-hybrid"]},
		)]}},
		"wool": {"figures": _set(_surface, _dew, 0.1), "row": {"role": "insulation"}},
	}
	count(_found(case.figures, case.row)) == 0
}

_noted(figures, notes) := found if {
	doc := desk.document([desk.row(12, "AB-1", {"figures": figures})], [], notes)
	found := dew_margin.findings with input as doc
}

_asked(k) := desk.limit("dew_margin_k", k, null, {"text": "surface at least 10 F above dew point"})

test_notes_ask_for_more if {
	some f in _noted(_set(_surface, _dew, 4), [_asked(5.556)])
	endswith(f.message, "dew point at 38 °F; the notes ask for a margin of 10 °F")
	f.related == [{
		"at": {"sheet": "Notes", "row": 3, "cell": "A3"},
		"cells": ["A3"],
		"what": "surface at least 10 F above dew point",
	}]
}

test_notes_silent[name] if {
	some name, case in {
		"on the notes' margin": {"k": 5.556, "asked": 5.556},
		"the notes ask for less than is usual": {"k": 2.3, "asked": 2.222},
	}
	count(_noted(_set(_surface, _dew, case.k), [_asked(case.asked)])) == 0
}

test_limit_of_another_place if {
	elsewhere := object.union(_asked(5.556), {"scope": "cold store"})
	count(_noted(_set(_surface, _dew, 4), [elsewhere])) == 0
}
