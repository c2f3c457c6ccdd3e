package sequence.primed_after_test

import data.lib.season_bench_test as bench
import data.sequence.primed_after

_gap(least, most) := {"spans": {"prime_gap_days": bench.span(least, most, least, "2027-05-12", "2027-05-10")}}

_found(line) := found if {
	found := primed_after.findings with input as bench.document([bench.sheet(line)], [], [])
}

test_whole_finding if {
	_found(_gap(-2, -2)) == {{
		"line": "W!12",
		"cells": ["J12", "K12"],
		"message": "The primer goes on 2 days after the sheet (sheet 10 May 2027, primer 12 May 2027)",
	}}
}

test_silent[name] if {
	some name, line in {
		"the same day": _gap(0, 0),
		"a range that overlaps": _gap(-3, 1),
		"no dates": {},
		"struck": object.union(_gap(-2, -2), {"struck": true}),
	}
	count(_found(line)) == 0
}
