package temperature.hot_sheet_test

import data.lib.season_bench_test as bench
import data.temperature.hot_sheet

_july := {"from": "2026-07-13", "to": "2026-07-13", "mean_min_c": 22.8, "mean_max_c": 32.9, "night_frost": 0}

_check(limit_c, text, above) := bench.check("membrane", "SAF-2", limit_c, text, 1 - above, 0.4, {
	"bound": "apply_max_c",
	"share_above": above,
})

_sun := bench.signal("sun_exposed", "remark", "full sun")

_shade := bench.signal("shaded", "remark", "in shade")

_found(check, signals) := found if {
	doc := bench.document([bench.sheet({"signals": signals})], [], [bench.window([check], _july)])
	found := hot_sheet.findings with input as doc
}

test_whole_finding if {
	_found(_check(32.2, "90 F", 0.27), [_sun]) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "M12", "P12"],
		"message": concat(" ", [
			"SAF-2 goes on up to 90 °F, but on 13 Jul 2026 in Milwaukee the air is above that in 27% of working hours,",
			"and the wall in the sun is near 118 °F",
		]),
		"severity": "error",
		"related": [],
		"facts": [" apply_max_c"],
		"keys": {"share_above": 0.27, "limit_c": 32.2},
	}}
}

test_usual_figure_of_a_winter_grade if {
	usual := object.union(_check(32.2, "90 F", 0.3), {"stated": false})
	some f in _found(usual, [_sun])
	f.severity == "warning"
	startswith(f.message, "SAF-2 goes on up to 90 °F (common practice for its grade), but on 13 Jul 2026 in Milwaukee")
	count(_found(object.union(usual, {"share_above": 0.2}), [])) == 0
}

test_sun_alone if {
	some f in _found(_check(43.3, "110 F", 0), [_sun])
	f.severity == "warning"
	contains(f.message, "the usual high is 91 °F, and the wall in the sun is near 118 °F")
}

test_severity[name] if {
	some name, tc in {
		"air alone": {"check": _check(32.2, "90 F", 0.25), "signals": [], "want": {"warning"}},
		"air, just under": {"check": _check(32.2, "90 F", 0.24), "signals": [], "want": set()},
		"the sun, exactly at the limit": {"check": _check(47.9, "118 F", 0), "signals": [_sun], "want": set()},
		"shade helps": {"check": _check(32.2, "90 F", 0.3), "signals": [_shade], "want": set()},
		"morning work in the sun": {
			"check": _check(43.3, "110 F", 0),
			"signals": [_sun, bench.signal("morning_work", "remark", "before 9")],
			"want": set(),
		},
		"shade does not help": {"check": _check(27, "80 F", 0.6), "signals": [_shade], "want": {"warning"}},
		"sun denied": {
			"check": _check(43.3, "110 F", 0),
			"signals": [_sun, bench.denial("sun_exposed", "remark", "not in sun")],
			"want": set(),
		},
	}
	{f.severity | some f in _found(tc.check, tc.signals)} == tc.want
}

_read(low, high) := {"min": low, "max": high, "no_limit": false, "text": "as read", "problem": "", "disagree": false}

test_within_the_range_read if {
	row := bench.sheet({"figures": {"reading_air_c": _read(18, 30)}})
	doc := bench.document([row], [], [bench.window([_check(32.2, "90 F", 0.27)], _july)])
	count(hot_sheet.findings) == 0 with input as doc
	warmer := bench.sheet({"figures": {"reading_air_c": _read(18, 34)}})
	above := object.union(doc, {"lines": [warmer]})
	count(hot_sheet.findings) == 1 with input as above
}

test_other_roles_are_silent if {
	count(_found(object.union(_check(32.2, "90 F", 0.9), {"role": "sealant"}), [_sun])) == 0
	count(_found(object.union(_check(32.2, "90 F", 0.9), {"bound": "apply_min_c"}), [_sun])) == 0
}

# A sheet of another building tells its own place.
test_place_of_the_sheet if {
	there := object.union(_july, {"place": "Tucson, Arizona"})
	doc := bench.document([bench.sheet({})], [], [bench.window([_check(32.2, "90 F", 0.6)], there)])
	some f in hot_sheet.findings with input as doc
	contains(f.message, "on 13 Jul 2026 in Tucson, Arizona the air is above that")
}
