package safety.coal_tar_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.safety.coal_tar

_tar(more) := object.union(
	bench.item("substrate", "old pitch dampproofing", "coal-tar-pitch", "roofing", ["coal-tar"]),
	more,
)

_row(n, one, more) := object.union(desk.row(n, "FM-1", {"items": [desk.named(n, one, "")]}), more)

_found(rows) := found if {
	found := coal_tar.findings with input as desk.document(rows, [], [])
}

test_once_in_full if {
	_found([_row(12, _tar({}), {}), _row(14, _tar({}), {})]) == {{
		"line": "W!12",
		"cells": ["F12"],
		"message": concat("", [
			"old pitch dampproofing: do not cut, grind or heat it without protection and a plan for dust and waste",
		]),
	}}
}

test_removal_counts if count(_found([_row(12, _tar({"polarity": "removed"}), {})])) == 1

test_silent[name] if {
	some name, rows in {
		"asphalt": [_row(12, bench.sbs, {})],
		"said not to be there": [_row(12, _tar({"polarity": "no"}), {})],
		"struck": [_row(12, _tar({}), {"struck": true})],
	}
	count(_found(rows)) == 0
}
