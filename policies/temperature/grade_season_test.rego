package temperature.grade_season_test

import data.lib.season_bench_test as bench
import data.temperature.grade_season

_winter := {"id": "FM-1W", "tag": "FM-1W", "family": "rubberized-asphalt-membrane", "keys": ["grade-low-temp"]}

_at := {"sheet": "Notes", "row": 7, "cell": "A7"}

_on(date) := {"dates": {"install": {"from": date, "to": date, "text": date}}}

_found(line, note, products) := found if {
	doc := object.union(bench.document([bench.sheet(line)], products, []), {"project": {
		"notes": [{"text": note, "at": _at}],
		"limits": [],
		"signals": [],
	}})
	found := grade_season.findings with input as doc with data.temperature.cold_sheet.findings as set()
}

_note := "4. Winter grade from 1 Nov to 15 Mar. All else as listed."

test_fires_in_full if {
	_found(_on("2027-11-02"), _note, [_winter]) == {{
		"line": "W!12",
		"cells": ["C12", "K12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) is set on 2027-11-02, when the notes ask for the winter grade",
			"(\"Winter grade from 1 Nov to 15 Mar\"); the product data has FM-1W",
		]),
		"related": [{"at": _at, "cells": ["A7"], "what": "Winter grade from 1 Nov to 15 Mar"}],
	}}
}

test_days_and_words[name] if {
	some name, case in {
		"first day": ["2027-11-01", _note, 1],
		"last day": ["2028-03-15", _note, 1],
		"the day before": ["2027-10-31", _note, 0],
		"the day after": ["2028-03-16", _note, 0],
		"month first": ["2027-12-01", "Cold-weather sheets November 1st through March 31st", 1],
		"within a year": ["2027-12-01", "LT grade: Jan 2 - Feb 28", 0],
		"denied": ["2027-12-01", "No low-temp rolls Nov 1 to Mar 1", 0],
		"of something else": ["2027-12-01", "Winter hours 1 Nov to 15 Mar", 0],
		"another sentence": ["2027-12-01", "Winter grade as listed. Heat from 1 Nov to 15 Mar", 0],
	}
	count(_found(_on(case[0]), case[1], [_winter])) == case[2]
}

test_silent[name] if {
	graded := object.union(bench.fm_1, {"keys": ["asphaltic", "grade-low-temp"]})
	some name, case in {
		"no winter grade in the data": [{}, []],
		"the winter grade": [{"items": [graded]}, [_winter]],
		"a day that cannot be": [{"dates": {"install": {"from": "", "to": "", "text": "Feb 30"}}}, [_winter]],
		"heated": [{"signals": [bench.signal("heated", "shelter", "heated")]}, [_winter]],
	}
	count(_found(object.union(_on("2027-12-01"), case[0]), _note, case[1])) == 0
}

test_silent_where_the_odds_tell_it if {
	doc := object.union(bench.document([bench.sheet(_on("2027-12-01"))], [_winter], []), {"project": {
		"notes": [{"text": _note, "at": _at}],
		"limits": [],
		"signals": [],
	}})
	count(grade_season.findings) == 0 with input as doc
		with data.temperature.cold_sheet.findings as {{"line": "W!12"}}
}
