package exposure.over_limit_test

import data.exposure.over_limit
import data.lib.season_bench_test as bench

_allows(days, text) := bench.product({"figures": {"exposure_days": bench.figure(days, null, text, "days")}})

_bare(least, most) := {
	"items": [bench.own],
	"spans": {"bare_days": bench.span(least, most, most, "2026-04-13", "2026-06-29")},
}

_found(line, product) := found if {
	found := over_limit.findings with input as bench.document([bench.sheet(line)], [product], [])
}

test_whole_finding if {
	_found(_bare(77, 77), _allows(60, "60")) == {{
		"line": "W!12",
		"cells": ["C12", "K12", "L12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) stays bare 77 days (13 Apr to 29 Jun 2026); its data",
			"allows 60 days",
		]),
		"severity": "error",
		"related": [{"product": "FM-1", "cells": ["G4"], "what": "its days open to the sun"}],
		"keys": {"days": 77, "allowed": 60},
	}}
}

test_days_counted_by_the_row_itself if {
	line := object.union(_bare(77, 77), {"spans": {"bare_days": bench.span(77, 77, 77, "", "")}})
	some f in _found(line, _allows(60, "60"))
	f.message == "FM-1 (rubberized-asphalt-membrane) stays bare 77 days; its data allows 60 days"
}

test_severity[name] if {
	some name, tc in {
		"one day over": {"line": _bare(61, 61), "want": {"error"}},
		"on the limit": {"line": _bare(60, 60), "want": set()},
		"only the long end": {"line": _bare(55, 61), "want": {"warning"}},
		"the long end on the limit": {"line": _bare(54, 60), "want": set()},
		"both ends": {"line": _bare(61, 67), "want": {"error"}},
		"covered before it is set, told elsewhere": {"line": _bare(-70, -7), "want": set()},
		"no dates": {"line": {"items": [bench.own]}, "want": set()},
		"no material": {"line": object.union(_bare(77, 77), {"items": []}), "want": set()},
		"struck": {"line": object.union(_bare(77, 77), {"struck": true}), "want": set()},
		"insulation": {"line": object.union(_bare(77, 77), {"role": "insulation"}), "want": set()},
		"under a tarp": {"line": object.union(_bare(77, 77), {"signals": [_tarp]}), "want": {"note"}},
	}
	{f.severity | some f in _found(tc.line, _allows(60, "60"))} == tc.want
}

_tarp := bench.signal("covered_otherwise", "remark", "tarped")

test_row_beats_product if {
	line := object.union(_bare(49, 49), {
		"cells": {"exposure_days": "R12"},
		"figures": {"exposure_days": bench.figure(30, null, "30", "days")},
	})
	some f in _found(line, _allows(60, "60"))
	endswith(f.message, "the row allows 30 days")
	f.cells == ["C12", "K12", "L12", "R12"]
	f.related == []
}

test_no_limit_and_unread_figures_are_silent[name] if {
	some name, change in {
		"no limit": {"no_limit": true, "min": null},
		"not a figure": {"problem": "not a figure", "min": null},
		"two units that differ": {"disagree": true},
	}
	product := bench.product({"figures": {"exposure_days": object.union(bench.figure(60, null, "60", "days"), change)}})
	count(_found(_bare(400, 400), product)) == 0
}

test_cover_date_of_another_row if {
	other := object.union(bench.sheet({"role": "insulation"}), {"id": "W!15", "row": 15, "cells": {"install": "K15"}})
	cover := object.union(bench.day("2026-06-29", "w/ layer 5", "L12"), {"state": "implied", "ref": "W!15"})
	line := object.union(_bare(77, 77), {"dates": {"cover": cover}})
	doc := bench.document([bench.sheet(line), other], [_allows(60, "60")], [])
	some f in over_limit.findings with input as doc
	f.related[0] == {"line": "W!15", "cells": ["K15"], "what": "its date is the cover date"}
}

_lettered(days, cover) := found if {
	letter := bench.limit("exposure_days", {"max": days, "letter": "K-7", "text": "K-7 maker extends FM-1"})
	doc := bench.with_notes(bench.document([bench.sheet(_bare(cover, cover))], [_allows(60, "60")], []), [letter], [])
	found := over_limit.findings with input as doc
}

test_makers_letter_gives_more if count(_lettered(90, 77)) == 0

test_past_the_makers_letter if {
	some f in _lettered(70, 77)
	endswith(f.message, "the maker's letter allows 70 days")
}

test_makers_letter_gives_less if {
	some f in _lettered(30, 77)
	endswith(f.message, "its data allows 60 days")
}

_citing(text) := object.union(_bare(77, 77), {"texts": {"remark": text}})

test_letter_cited_by_the_row if {
	every text in [
		"Accepted by sheet maker's letter 12 May, up to 90 d.",
		"mfr letter L-3 allows 80 days here",
		"Supplier's letter of 3/4 gives FM-1 80 days here",
	] {
		count(_found(_citing(text), _allows(60, "60"))) == 0
	}
}

test_letter_that_gives_less_or_is_not_there if {
	every text in ["Maker's letter up to 70 d", "maker's letter for 90 days requested", "GC letter, 90 d"] {
		count(_found(_citing(text), _allows(60, "60"))) == 1
	}
}

# Work of a month that is covered within a week: what is laid first lies longest, and is asked about.
test_what_is_laid_first[name] if {
	some name, case in {
		"first to first is over": {"allowed": 60, "level": "warning"},
		"first to first is on the limit": {"allowed": 80, "level": "note"},
		"last to last is over": {"allowed": 49, "level": "warning"},
		"all is over": {"allowed": 39, "level": "error"},
	}
	spans := {"bare_days": bench.span(40, 90, 50, "2026-05-01", "2026-07-29")}
	line := object.union(_bare(40, 90), {"spans": spans})
	{f.severity | some f in _found(line, _allows(case.allowed, "x"))} == {case.level}
}
