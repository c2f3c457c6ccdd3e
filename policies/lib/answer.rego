# METADATA
# title: Answer
# description: |
#   A finding for a program that runs the bundle on its own OPA: what the rule says, with the words of its metadata,
#   the severity that counts, and the place in the workbook. The engine does the same in Go.
package lib.answer

# finding(rule, raw): rule is what data.answer.rules holds of it, raw what the rule made.
finding(rule, raw) := object.union_n([
	rule.words,
	{"file": input.file, "cells": []},
	{key: value | some key, value in raw; value != ""},
	{
		"severity": rule.grades[object.get(raw, "severity", "")],
		"related": [object.union(other, _spot(other)) | some other in object.get(raw, "related", [])],
	},
	_spot(raw),
])

_spot(place) := {"sheet": line.sheet, "row": _row(line, place), "mark": line.mark} if line := _lines[place.line]

_spot(place) := {"sheet": product.sheet, "row": product.row, "mark": product.tag} if {
	product := _products[place.product]
}

_spot(place) := {"sheet": place.at.sheet, "row": place.at.row, "mark": ""} if place.at

# The cells of a line turned on its side stand below one another: the first that does more than name it counts.
_row(line, place) := min(_rows(told)) if {
	line.turned
	told := {cell | some cell in place.cells} - {line.cells[slot] | some slot in ["mark", "tag", "material"]}
	count(told) > 0
} else := min(_rows(place.cells)) if {
	line.turned
	count(place.cells) > 0
} else := line.row

_rows(cells) := [to_number(regex.find_n(`[0-9]+$`, cell, 1)[0]) | some cell in cells]

_lines := {line.id: line | some line in input.lines}

_products := {product.id: product | some product in input.products}
