package temperature.kettle_test

import data.lib.desk_test as desk
import data.temperature.kettle

_read(low, high, text) := object.union(desk.figure(low, text, "°C"), {
	"max": high,
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
})

_asked(low, high, text) := object.union(desk.figure(low, text, "°C"), {
	"max": high,
	"at": {"sheet": "P", "row": 7, "cell": "L7"},
})

_found(reading, asked) := found if {
	row := desk.row(12, "HR-2", {"figures": {"reading_kettle_c": reading}})
	product := desk.product("HR-2", 7, {"figures": {"kettle_c": asked}})
	found := kettle.findings with input as desk.document([row], [product], [])
}

_usual := _asked(175, 205, "175 to 205 °C")

test_fires_in_full if {
	_found(_read(231, 231, "231 °C"), _usual) == {{
		"line": "W!12",
		"cells": ["C12", "L12", "M12"],
		"message": concat(" ", [
			"The kettle of HR-2 (rubberized-asphalt-membrane) was read at 231 °C;",
			"its data asks for 175 to 205 °C",
		]),
		"related": [{"product": "HR-2", "cells": ["L7"], "what": "its data"}],
	}}
}

test_fires[name] if {
	some name, case in {
		"too cool": [_read(160, 160, "160 °C"), _usual],
		"part of the day too hot": [_read(190, 220, "190 to 220 °C"), _usual],
		"over a stated most": [_read(231, 231, "231 °C"), _asked(null, 205, "205 °C max.")],
		"under a stated least": [_read(160, 160, "160 °C"), _asked(175, null, "175 °C min.")],
	}
	count(_found(case[0], case[1])) == 1
}

test_silent[name] if {
	some name, case in {
		"at the upper end": [_read(205, 205, "205 °C"), _usual],
		"at the lower end": [_read(175, 175, "175 °C"), _usual],
		"within the thermometer": [_read(207, 207, "207 °C"), _usual],
		"one figure and no range": [_read(205, 205, "205 °C"), _asked(190, 190, "190 °C")],
		"no heat of a kettle": [_read(12, 12, "12 °C"), _usual],
		"two units that disagree": [object.union(_read(231, 231, "231 °C"), {"disagree": true}), _usual],
	}
	count(_found(case[0], case[1])) == 0
}

test_silent_without_figures if {
	row := desk.row(12, "HR-2", {"figures": {"reading_kettle_c": _read(231, 231, "231 °C")}})
	bare := desk.product("HR-2", 7, {"figures": {}})
	count(kettle.findings) == 0 with input as desk.document([row], [bare], [])
	told := desk.product("HR-2", 7, {"figures": {"kettle_c": _usual}})
	struck := object.union(row, {"struck": true})
	count(kettle.findings) == 0 with input as desk.document([struck], [told], [])
	count(kettle.findings) == 0 with input as desk.document([desk.row(12, "HR-2", {})], [told], [])
}
