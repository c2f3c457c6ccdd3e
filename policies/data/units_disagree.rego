# METADATA
# title: Two units that do not agree
# description: |
#   A cell prints a figure in two units and they are farther apart than rounding, as 60 mil (2.5 mm). One of the
#   two is bought or built, and which one depends on the reader. Rows that repeat the same cell are told once. It
#   does not apply to the usual rounding of printed pairs, such as 40 mil (1.0 mm) or 36 in. (900 mm).
# custom:
#   id: data-units-disagree
#   topic: data
#   severity: warning
#   reason: One of the two figures is wrong, and the crew or the buyer takes either.
#   remedy: Ask which of the two is meant, and correct the other.
#   source: arithmetic; hard metric sizes within rounding are equal
#   basis: common-practice
#   example: "45 mil (2.0 mm): 45 mil is 1.14 mm"
#   looks: across rows
package data.units_disagree

import data.lib.facts
import data.lib.finding
import data.lib.measure

findings contains finding.at_with(hits[0].row, hits[0].cells, _message(hits[0]), {"related": related}) if {
	some hits in _by_text
	related := [finding.related(hit.row, hit.cells, "the same cell") | some hit in array.slice(hits, 1, count(hits))]
}

findings contains finding.for_product(product, measure.cell(figure, kind), _message(hit), {}) if {
	some product in input.products
	some kind, figure in product.figures
	figure.disagree
	hit := {"kind": kind, "figure": figure, "row": product}
}

_by_text := {key: hits |
	some key in {one.key | some one in _hits}
	hits := [hit | some hit in _hits; hit.key == key]
}

_hits := [{"key": key, "row": line, "kind": kind, "figure": figure, "cells": measure.cell(figure, kind)} |
	some line in facts.live_lines
	some kind, figure in line.figures
	figure.disagree
	key := concat("|", [line.sheet, kind, figure.text, object.get(line.texts, "material", line.id)])
]

_message(hit) := sprintf("the %s \"%s\" tells two figures: %s and %s", [
	object.get(data.lib.measures.names, hit.kind, hit.kind),
	hit.figure.text,
	_si(hit.kind, measure.low(hit.figure)),
	_si(hit.kind, hit.figure.other),
]) if {
	hit.figure.other != null
} else := sprintf("the %s \"%s\" tells two figures that do not agree", [
	object.get(data.lib.measures.names, hit.kind, hit.kind),
	hit.figure.text,
])

_si(kind, value) := measure.written(value, data.lib.measures.kinds[kind], {"text": "", "unit": ""})
