package sequence.bed_after_cover_test

import data.lib.season_bench_test as bench
import data.sequence.bed_after_cover

_item(slot, id) := {
	"id": sprintf("%s/%s", [slot, id]),
	"slot": slot,
	"text": id,
	"tag": id,
	"product": id,
	"name": "",
	"family": "",
	"class": "",
	"keys": [],
	"polarity": "yes",
}

_cap(day, place) := bench.line_of(11, {
	"place": place,
	"group": "G1",
	"refs": ["07 62 00", "4/A-310"],
	"items": [_item("tag", "CM-2"), _item("substrate", "UM-1")],
	"dates": {"install": bench.day(day, day, "")},
})

_under(row, day, more) := bench.line_of(row, object.union(
	{
		"place": "roof 2 curb top",
		"group": "G1",
		"refs": ["4/A-310"],
		"items": [_item("tag", "UM-1"), _item("front", "CM-2")],
		"dates": {"install": bench.day(day, day, "")},
	},
	more,
))

_found(lines) := found if {
	found := bed_after_cover.findings with input as bench.document(lines, [], [])
}

test_whole_finding if {
	_found([_cap("2026-05-04", "roof 2 curb cap"), _under(12, "2026-05-11", {})]) == {{
		"line": "W!12",
		"cells": ["K12"],
		"message": "UM-1 goes on 11 May 2026, after CM-2 over it (4 May 2026)",
		"related": [{"line": "W!11", "cells": ["K11"], "what": "what lies over it"}],
	}}
}

test_by_place_alone if {
	count(_found([_cap("2026-05-04", "Roof 2 Curb Top"), _under(12, "2026-05-11", {"refs": []})])) == 1
}

test_silent[name] if {
	some name, lines in {
		"the same day": [_cap("2026-05-04", "roof 2 curb cap"), _under(12, "2026-05-04", {})],
		"before it": [_cap("2026-05-04", "roof 2 curb cap"), _under(12, "2026-05-01", {})],
		"another roof": [_cap("2026-05-04", "roof 3 curb cap"), _under(12, "2026-05-11", {})],
		"another place": [_cap("2026-05-04", "west wall cap"), _under(12, "2026-05-11", {})],
		"another detail": [_cap("2026-05-04", "roof 2 curb cap"), _under(12, "2026-05-11", {"refs": ["5/A-310"]})],
		"another wall": [_cap("2026-05-04", "roof 2 curb cap"), _under(12, "2026-05-11", {"group": "G2"})],
		"covered with something else": [
			_cap("2026-05-04", "roof 2 curb cap"),
			_under(12, "2026-05-11", {"items": [_item("tag", "UM-1"), _item("front", "CM-3")]}),
		],
		"part of it in time": [
			_cap("2026-05-04", "roof 2 curb cap"),
			_under(12, "2026-05-11", {}),
			_under(13, "2026-05-01", {}),
		],
	}
	count(_found(lines)) == 0
}
