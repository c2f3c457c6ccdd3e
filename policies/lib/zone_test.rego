package lib.zone_test

import data.lib.zone

_milwaukee := [-5, -3, 2, 8, 14, 19, 22, 22, 18, 11, 4, -2]

_seattle := [5, 6, 8, 10, 13, 16, 19, 19, 16, 12, 7, 5]

_houston := [12, 14, 17, 21, 25, 28, 29, 29, 27, 22, 17, 13]

_miami := [20, 21, 22, 24, 26, 28, 29, 29, 28, 26, 24, 21]

_atlanta := [6, 8, 12, 17, 21, 25, 27, 26, 23, 17, 12, 7]

_fairbanks := [-22, -18, -11, 1, 10, 16, 17, 14, 7, -4, -16, -20]

_winnipeg := [-16, -13, -6, 4, 12, 17, 20, 19, 13, 5, -5, -13]

test_by_months[name] if {
	some name, case in {
		"Milwaukee": {"months": _milwaukee, "key": "5"},
		"Seattle": {"months": _seattle, "key": "4C"},
		"Houston": {"months": _houston, "key": "2"},
		"Miami": {"months": _miami, "key": "1"},
		"Atlanta": {"months": _atlanta, "key": "3"},
		"Fairbanks": {"months": _fairbanks, "key": "7"},
		"Winnipeg": {"months": _winnipeg, "key": "7"},
	}
	zone.by_months(case.months).key == case.key
}

_with(notes, months, country) := {
	"project": {"notes": [_note(text) | some text in notes], "place": {"country": country}},
	"profiles": [{"result": null}, {"result": {"conditions": {"out_c": months}}}],
}

_note(text) := {"text": text, "at": {"sheet": "", "row": 1, "cell": "A1"}}

test_stated_beats_months if {
	found := zone.here with input as _with(["Climate Zone 6A, IECC 2021."], _houston, "US")
	found.key == "6"
	found.says == "climate zone 6A"
	found.stated
}

test_marine_stated if {
	found := zone.here with input as _with(["ASHRAE zone 4C"], _houston, "US")
	found.key == "4C"
}

test_months_where_nothing_is_stated if {
	found := zone.here with input as _with(["Wall zone 6 at grid B."], _houston, "US")
	found.key == "2"
	not found.stated
}

test_no_place if {
	not zone.here with input as {"project": {"notes": []}, "profiles": []}
}

test_code_of_its_country if {
	zone.is_of_code with input as _with([], _milwaukee, "US")
	not zone.is_of_code with input as _with([], _milwaukee, "CA")
	zone.is_of_code with input as _with(["Climate zone 7"], _milwaukee, "CA")
}
