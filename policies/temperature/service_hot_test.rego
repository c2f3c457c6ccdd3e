package temperature.service_hot_test

import data.lib.season_bench_test as bench
import data.temperature.service_hot

_serves(c, text) := bench.product({"figures": {"service_max_c": bench.figure(c, null, text, "°F")}})

_row(remark) := {"items": [bench.own], "texts": {"remark": remark}}

_found(line, products) := found if {
	found := service_hot.findings with input as bench.document([bench.sheet(line)], products, [])
}

test_whole_finding if {
	_found(_row("flue collar runs at 220 F (104 C)"), [_serves(82.2, "180")]) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) serves to 180 °F; the row says",
			`"flue collar runs at 220 F (104 C)"`,
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["F4"], "what": "its service temperature"}],
	}}
}

test_no_data_is_a_warning if {
	some f in _found(_row("200 F sleeve"), [bench.product({})])
	f.severity == "warning"
	contains(f.message, "serves to 180 °F as a rule")
}

test_at_the_limit if {
	count(_found(_row("flange runs at 160 F"), [_serves(71, "160")])) == 0
	count(_found(_row("flange runs at 162 F"), [_serves(71, "160")])) == 1
	count(_found(_row("flange runs at 75 °C"), [_serves(71, "160")])) == 1
}

test_silent[name] if {
	some name, remark in {
		"insulated": "steam pipe at 250 F, insulated",
		"clear": "steam pipe at 250 F, 2 ft clear of the sheet",
		"a tool": "laps warmed with a hot air gun, 400 F",
		"a product's rating": "pipe seal rated to 400 F",
		"a tent": "tent pipe heater, 90 C",
		"no figure": "hot pipe near the sheet",
		"no hot part": "kept at 200 F",
		"nothing": "",
	}
	count(_found(_row(remark), [_serves(71, "160")])) == 0
}

test_other_clause_is_kept_apart if {
	count(_found(_row("prime from 40 F; flange runs at 220 F"), [_serves(82.2, "180")])) == 1
}

test_sheet_for_the_heat_is_silent if {
	hot := object.union(bench.fm_1, {"keys": ["asphaltic", "grade-high-temp"]})
	count(_found({"items": [hot], "texts": {"remark": "200 F sleeve"}}, [])) == 0
	count(_found(_row("200 F sleeve"), [_serves(115.6, "240")])) == 0
}

test_read_under_the_metal if {
	count(_found(_row("thermocouple under the coping peaked at 91 °C"), [_serves(82.2, "180")])) == 1
	count(_found(_row("peaks at 88 °C beneath the zinc pans"), [_serves(82.2, "180")])) == 1
	count(_found(_row("logger read 70 °C at the pans"), [_serves(82.2, "180")])) == 0
	count(_found(_row("hose test logged at 90 C"), [_serves(82.2, "180")])) == 0
}
