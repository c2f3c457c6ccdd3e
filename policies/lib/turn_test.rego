package lib.turn_test

import data.lib.turn

_line(a, b) := {"dates": {"sent": a, "returned": b}}

_day(from, to) := {"from": from, "to": to}

test_before if turn.before(_line(_day("2027-03-01", ""), _day("2027-03-02", "")), "sent", "returned")

test_not_before[name] if {
	some name, line in {
		"the same day": _line(_day("2027-03-01", "2027-03-01"), _day("2027-03-01", "2027-03-01")),
		"after": _line(_day("2027-03-02", ""), _day("2027-03-01", "")),
		"spans that overlap": _line(_day("2027-03-01", "2027-03-05"), _day("2027-03-04", "2027-03-08")),
		"not known": _line(_day("", ""), _day("2027-03-01", "")),
		"none": {"dates": {"returned": _day("2027-03-01", "")}},
	}
	not turn.before(line, "sent", "returned")
}

test_told if {
	line := _line(_day("2027-03-01", ""), _day("2027-03-04", "2027-03-08"))
	[turn.told(line, slot) | some slot in ["sent", "returned"]] == ["1 Mar 2027", "4 Mar to 8 Mar 2027"]
}
