package lib.degrees_test

import data.lib.degrees

test_write[like] if {
	some like, want in {
		"40 F": "20 °F",
		"40°F (4 °C)": "20 °F",
		"4 °C (40 °F)": "-6.7 °C",
		"40 deg. F and rising": "20 °F",
		"+4C": "-6.7 °C",
		"4": "-6.7 °C",
		"": "-6.7 °C",
		"Fahrenheit": "20 °F",
		"40 °f": "20 °F",
		"60 to 95, indoors F": "20 °F",
	}
	degrees.write(-6.67, like) == want
}

test_unit_of_the_column if {
	check := {"bound": "apply_min_c", "limit_text": "40", "product": "FM-1"}
	degrees.like({"figures": {"apply_min_c": {"unit": "°F"}}}, check) == "40 °F"
	doc := {"products": [{"id": "FM-1", "figures": {"apply_min_c": {"unit": "F"}}}]}
	degrees.like({"figures": {}}, check) == "40 F" with input as doc
	degrees.like({"figures": {}}, check) == "40" with input as {"products": []}
}
