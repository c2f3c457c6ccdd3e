package data.place_unknown_test

import data.data.place_unknown
import data.lib.desk_test as desk

_found(place) := found if {
	doc := object.union(desk.document([desk.row(12, "R-1", {})], [], []), {"project": {"place": place}})
	found := place_unknown.findings with input as doc
}

test_fires_in_full if {
	_found({"problem": "no city is named", "at": {"sheet": "", "row": 0}}) == {{
		"at": {"sheet": "W", "row": 1},
		"cells": [],
		"message": "the place of the job is not known (no city is named); name the city and the state, province or country",
	}}
}

test_stands_at_the_words if {
	at := {"sheet": "W", "row": 2, "cell": "A2"}
	{f.at | some f in _found({"problem": "two places fit", "at": at})} == {at}
}

test_without_tables if {
	doc := object.union(desk.document([desk.row(12, "R-1", {})], [], []), {"reading": {"tables": []}})
	found := place_unknown.findings with input as object.union(doc, {"project": {"place": {"problem": "none"}}})
	{f.at.sheet | some f in found} == {"W"}
}

test_silent if count(_found({"problem": "", "at": {"sheet": "", "row": 0}})) == 0
