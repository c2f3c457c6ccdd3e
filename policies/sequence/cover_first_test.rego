package sequence.cover_first_test

import data.lib.season_bench_test as bench
import data.sequence.cover_first

_bare(least, most) := {"spans": {"bare_days": bench.span(least, most, least, "2027-06-10", "2027-06-03")}}

_found(lines) := found if {
	found := cover_first.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([bench.sheet(_bare(-7, -7))]) == {{
		"line": "W!12",
		"cells": ["K12", "L12"],
		"message": concat(" ", [
			"The cover date of FM-1 (rubberized-asphalt-membrane), 3 Jun 2027, lies 7 days before its",
			"installation on 10 Jun 2027",
		]),
		"related": [],
	}}
}

test_other_rows_count_too if {
	line := object.union(bench.sheet(_bare(-1, -1)), {"role": "insulation", "items": []})
	{f.message | some f in _found([line])} == {concat(" ", [
		"The cover date of this row, 3 Jun 2027, lies 1 day before its",
		"installation on 10 Jun 2027",
	])}
}

test_date_of_another_row if {
	cover := {"dates": {"cover": object.union(bench.day("2027-06-03", "w/ layer 5", "L12"), {
		"state": "implied",
		"ref": "W!15",
	})}}
	other := object.union(bench.sheet({}), {"id": "W!15", "row": 15, "cells": {"install": "K15"}})
	some f in _found([bench.sheet(object.union(_bare(-7, -7), cover)), other])
	f.related == [{"line": "W!15", "cells": ["K15"], "what": "its date is the cover date"}]
}

test_silent[name] if {
	some name, line in {
		"the same day": _bare(0, 0),
		"a range that overlaps": _bare(-6, 1),
		"a range that ends on the day": _bare(-6, 0),
		"after": _bare(7, 7),
		"no dates": {},
		"struck": object.union(_bare(-7, -7), {"struck": true}),
	}
	count(_found([bench.sheet(line)])) == 0
}

test_work_that_came_wrapped if {
	wrapped := {"dates": {"unwrapped": bench.day("2027-06-10", "10 Jun", "J12")}}
	some f in _found([bench.sheet(object.union(_bare(-7, -7), wrapped))])
	endswith(f.message, "lies 7 days before it was set or unwrapped on 10 Jun 2027")
}
