package data.reading_implausible_test

import data.data.reading_implausible
import data.lib.desk_test as desk
import data.lib.season_bench_test as season

_window := {"line": "W!12", "from": "2027-01-20", "to": "2027-01-20", "mean_min_c": -20, "mean_max_c": -9}

_read(key, value) := {key: object.union(
	desk.figure(value, sprintf("%v", [value]), "°C"),
	{"at": {"sheet": "W", "row": 12, "cell": "M12"}},
)}

_found(figures, more) := found if {
	row := desk.row(12, "FM-1", object.union(
		{"figures": figures, "dates": {"install": season.day("2027-01-20", "2027-01-20", "")}},
		more,
	))
	doc := object.union(desk.document([row], [], []), {"windows": [_window]})
	found := reading_implausible.findings with input as doc
}

test_fires_in_full if {
	some found in _found(_read("reading_air_c", 15), {})
	found.message == "the air was read at 15 °C on 20 Jan 2027, where the usual maximum of those days is -9 °C"
	"M12" in found.cells
}

test_far_below if count(_found(_read("reading_air_c", -45), {})) == 1

test_silent[name] if {
	some name, case in {
		"a mild day": [_read("reading_air_c", 4), {}],
		"on the margin": [_read("reading_air_c", 7), {}],
		"of the surface": [_read("reading_surface_c", 15), {}],
		"tented": [_read("reading_air_c", 15), {"signals": [season.signal("heated", "remark", "tented")]}],
		"nothing read": [{}, {}],
	}
	count(_found(case[0], case[1])) == 0
}
