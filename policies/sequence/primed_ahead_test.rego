package sequence.primed_ahead_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.sequence.primed_ahead

_gap(least, most) := {
	"spans": {"prime_gap_days": bench.span(least, most, least, "2027-04-30", "2027-05-03")},
	"dates": {"prime": bench.day("2027-04-30", "Prime Fri 4/30, sheet Mon 5/3", "K12")},
}

_own := {"items": [bench.fm_1, base.own(bench.p_2)]}

_asks := base.product("P-2", {"signals": [base.said("same_day", "cover same day")], "cells": {"remark": "K9"}})

_found(line, products, limits) := found if {
	doc := bench.with_notes(bench.document([bench.sheet(line)], products, []), limits, [])
	found := primed_ahead.findings with input as doc
}

test_whole_finding if {
	_found(object.union(_gap(3, 3), _own), [_asks], []) == {{
		"line": "W!12",
		"cells": ["F12", "J12", "K12"],
		"message": concat(" ", [
			"Primer P-2 goes on 3 days before the sheet (30 Apr to 3 May 2027);",
			"the data of P-2 asks for the same day",
		]),
		"severity": "error",
		"related": [{"product": "P-2", "cells": ["K9"], "what": "asks for the same day"}],
	}}
}

test_who_asks[name] if {
	note := bench.limit("same_day", {"roles": ["primer"], "text": "Prime and cover same day"})
	some name, tc in {
		"the notes": {"line": {}, "limits": [note], "says": "the notes ask for the same day", "severity": "error"},
		"the row": {
			"line": {"signals": [bench.signal("same_day", "remark", "same day")]},
			"limits": [],
			"says": "the row asks for the same day",
			"severity": "error",
		},
		"nobody": {"line": {}, "limits": [], "says": "primer is usually covered the same day", "severity": "warning"},
	}
	some f in _found(object.union(_gap(1, 1), tc.line), [], tc.limits)
	f.severity == tc.severity
	endswith(f.message, tc.says)
}

test_words_without_dates if {
	line := object.union(_own, {"signals": [bench.signal("primed_ahead", "remark", "primer left overnight")]})
	some f in _found(line, [_asks], [])
	f.severity == "warning"
	f.cells == ["F12", "J12", "K12", "M12"]
	contains(f.message, `Primer P-2 goes on ahead of the sheet ("primer left overnight")`)
}

test_silent[name] if {
	again := {"texts": {"remark": "re-prime on the day of the sheet"}}
	some name, line in {
		"the same day": _gap(0, 0),
		"a week that may be the same day": _gap(-2, 4),
		"primed again": object.union(_gap(3, 3), again),
		"no dates": {},
		"struck": object.union(_gap(3, 3), {"struck": true}),
		"no sheet": object.union(_gap(3, 3), {"role": "insulation"}),
	}
	count(_found(object.union(_own, line), [_asks], [])) == 0
}

test_primed_earlier_by_the_shop if {
	line := object.union(_gap(3, 3), {"signals": [bench.signal("primed_earlier", "primer", "shop primed")]})
	count(_found(line, [], [])) == 0
}

test_words_for_priming_again[text] if {
	some text, hits in {
		"re-prm before the sheet": 0,
		"reprime Monday": 0,
		"no re-prm": 1,
		"not re-primed": 1,
		"primed once": 1,
	}
	count(_found(object.union(_own, object.union(_gap(3, 3), {"texts": {"remark": text}})), [_asks], [])) == hits
}
