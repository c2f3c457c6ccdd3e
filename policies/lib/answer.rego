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

_spot(place) := {"sheet": line.sheet, "row": line.row, "mark": line.mark} if line := _lines[place.line]

_spot(place) := {"sheet": product.sheet, "row": product.row, "mark": product.tag} if {
	product := _products[place.product]
}

_spot(place) := {"sheet": place.at.sheet, "row": place.at.row, "mark": ""} if place.at

_lines := {line.id: line | some line in input.lines}

_products := {product.id: product | some product in input.products}
