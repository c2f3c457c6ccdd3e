package lib.words_test

import data.lib.words

test_days if {
	words.days(1) == "1 day"
	words.days(0) == "0 days"
	words.days(77) == "77 days"
}

test_number[note] if {
	some note, tc in {
		"whole": {"x": 250, "want": "250"},
		"ends in zero": {"x": 300.0, "want": "300"},
		"one decimal": {"x": 2.54, "want": "2.5"},
		"rounds to whole": {"x": 10.02, "want": "10"},
		"small": {"x": 0.02, "want": "0.02"},
		"zero": {"x": 0, "want": "0"},
		"negative": {"x": -4.44, "want": "-4.4"},
	}
	words.number(tc.x) == tc.want
}

test_percent if {
	words.percent(0.634) == "63%"
	words.percent(1) == "100%"
}

test_dates if {
	words.date("2026-04-09") == "9 Apr 2026"
	words.date_range("2026-04-13", "2026-06-29") == "13 Apr to 29 Jun 2026"
	words.date_range("2026-12-01", "2027-01-03") == "1 Dec 2026 to 3 Jan 2027"
	words.date_range("2026-12-01", "2026-12-01") == "1 Dec 2026"
	words.span({"from": "2026-08-10", "to": "2026-10-20"}) == "10 Aug to 20 Oct 2026"
}

test_temperature[note] if {
	some note, tc in {
		"Fahrenheit sign": {"like": "40°F and rising", "want": "41 °F"},
		"bare letter": {"like": "40F", "want": "41 °F"},
		"degrees": {"like": "40 deg. F", "want": "41 °F"},
		"Celsius": {"like": "5 °C", "want": "4.9 °C"},
		"no words": {"like": "", "want": "4.9 °C"},
		"feet are not degrees": {"like": "over 4 ft", "want": "4.9 °C"},
	}
	words.temperature(4.9, tc.like) == tc.want
}

test_figure if {
	words.figure({"text": "40 mil", "unit": "mil"}, "1 mm") == "40 mil"
	words.figure({"text": "40", "unit": "mil"}, "1 mm") == "40 mil"
	words.figure({"text": "", "unit": ""}, "1 mm") == "1 mm"
}

test_list if {
	words.list([]) == ""
	words.list(["a"]) == "a"
	words.list(["a", "b"]) == "a and b"
	words.list(["a", "b", "c"]) == "a, b and c"
}

test_quoted if {
	words.quoted("bare concrete") == `"bare concrete"`
	count(words.quoted("0123456789012345678901234567890123456789012345678901234567890123456789")) == 61
}

test_be if {
	words.be(["P-1"]) == "is"
	words.be(["P-1", "P-2"]) == "are"
}
