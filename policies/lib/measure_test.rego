package lib.measure_test

import data.lib.measure

test_number[want] if {
	some want, value in {"40": 40, "1.14": 1.143, "0.0203": 0.02032, "39.4": 39.37, "250": 250.00001, "2": 2.0}
	measure.number(value) == want
}

test_written[want] if {
	some want, case in {
		"0.02 cfm/ft²": {"value": 0.1016, "kind": "air", "text": "0.02 cfm/ft2"},
		"0.1016 L/(s·m²)": {"value": 0.1016, "kind": "air", "text": "0.1"},
		"40 mil": {"value": 1.016, "kind": "length", "text": "40 mil (1.0 mm)"},
		"1.02 mm": {"value": 1.016, "kind": "length", "text": "1,0"},
		"2 in": {"value": 50, "kind": "length", "text": "1 1/2 in."},
		"2.2 in": {"value": 56, "kind": "length", "text": "1 1/2 in."},
		"16 perm": {"value": 915.416, "kind": "vapor", "text": "16 perms"},
		"40 °F": {"value": 4.4444, "kind": "temperature", "text": "40 F"},
	}
	measure.written(case.value, case.kind, {"text": case.text, "unit": ""}) == want
}

test_bounds if {
	measure.high({"min": null, "max": 3}) == 3
	measure.high({"min": 2, "max": null}) == 2
	measure.low({"min": 2, "max": 3}) == 2
	not measure.high({"min": null, "max": null})
}

test_sound if {
	measure.is_sound({"min": 1, "max": 1, "problem": "", "disagree": false})
	not measure.is_sound({"min": 1, "max": 1, "problem": "", "disagree": true})
	not measure.is_sound({"min": null, "max": null, "problem": "", "disagree": false})
}

# A note of two units is told in that of the row.
test_beside[text] if {
	some text, want in {"75 mm (3 in)": "75 mm", "3 in": "75 mm", "75": "75 mm"}
	measure.beside(75, "length", {"text": text, "unit": ""}, {"text": "50", "unit": "mm"}) == want
	inches := measure.beside(76.2, "length", {"text": text, "unit": ""}, {"text": "2 in", "unit": "in"})
	inches == {"75 mm (3 in)": "3 in", "3 in": "3 in", "75": "76.2 mm"}[text]
}

test_kilopascals if measure.written(110000, "strength", {"text": "60 kPa", "unit": "MPa"}) == "110 kPa"

# What a cell tells for sides and for ends is told apart; a fraction and two units of one figure stay as they are.
test_as_said_of_several[text] if {
	some text, want in {
		"2 / 6 in.": "2 in",
		"2/ 6 in.": "2 in",
		"1 3/4 in.": "1 3/4 in.",
		"2 in. / 51 mm": "2 in. / 51 mm",
	}
	figure := {"text": text, "unit": "in", "min": 50.8, "max": 50.8}
	measure.as_said("length", figure) == want
}
