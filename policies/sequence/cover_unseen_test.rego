package sequence.cover_unseen_test

import data.lib.season_bench_test as bench
import data.sequence.cover_unseen

_row(row, inspected) := object.union(
	bench.sheet({
		"dates": {"cover": bench.day("2027-07-20", "2027-07-20", ""), "inspected": inspected},
		"cells": {"inspected": sprintf("R%d", [row]), "cover": sprintf("L%d", [row])},
	}),
	{"id": sprintf("W!%d", [row]), "row": row},
)

_seen := bench.day("2027-07-19", "2027-07-19", "")

_missing := object.union(_seen, {"from": "", "to": "", "state": "missing"})

_log(seen, last) := array.concat([_row(row, _seen) | some row in numbers.range(20, 19 + seen)], [_row(12, last)])

_found(lines) := found if {
	found := cover_unseen.findings with input as bench.document(lines, [], [])
}

test_fires_in_full if {
	_found(_log(5, _missing)) == {{
		"line": "W!12",
		"cells": ["L12", "R12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is covered on 20 Jul 2027 and has no date of inspection,",
			"which the other rows have",
		]),
	}}
}

test_silent[name] if {
	some name, lines in {
		"a short log": _log(4, _missing),
		"inspected": _log(5, _seen),
		"none needed": _log(5, object.union(_missing, {"state": "none"})),
		"kept for some rows only": array.concat(_log(5, _missing), [_row(30, _missing), _row(31, _missing)]),
		"a board among sheets": array.concat(_log(5, _seen), [object.union(_row(31, _missing), {"role": "separator"})]),
		"not covered yet": array.concat(
			_log(5, _seen),
			[object.union(_row(12, _missing), {"dates": {"inspected": _missing, "cover": _missing}})],
		),
	}
	count(_found(lines)) == 0
}
