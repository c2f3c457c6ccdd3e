# METADATA
# title: Figure without a unit
# description: |
#   The cell begins with a figure, and neither the cell nor its heading tells the unit: 40 may be mil or mm, 5 °F
#   or °C. Nothing was held against it, so a limit that is broken stays unseen. Told once for each column. It does
#   not apply where the heading or any word of the cell tells the unit, nor to the nominal size of lumber.
# custom:
#   id: data-no-unit
#   topic: data
#   severity: note
#   reason: 40 may be mil, degrees or days; a bare figure is not guessed.
#   remedy: Write the unit beside the figure or in the heading.
#   source: common practice
#   basis: common-practice
#   example: "thickness: 40"
#   looks: across rows
package data.no_unit

import data.lib.facts
import data.lib.finding
import data.lib.measure

findings contains finding.at_with(rows[0].row, rows[0].cells, _message(rows[0]), {"related": related}) if {
	some rows in _groups(_of_lines)
	related := [finding.related(hit.row, hit.cells, "the same") | some hit in array.slice(rows, 1, count(rows))]
}

findings contains finding.for_product(rows[0].row, rows[0].cells, _message(rows[0]), {"related": related}) if {
	some rows in _groups(_of_products)
	related := [finding.related_product(hit.row, hit.cells, "the same") | some hit in array.slice(rows, 1, count(rows))]
}

_groups(hits) := {key: rows |
	some key in {one.key | some one in hits}
	rows := [hit | some hit in hits; hit.key == key]
}

_of_lines := [hit | some line in facts.live_lines; some hit in _hits(line)]

_of_products := [hit | some product in input.products; some hit in _hits(product)]

_hits(row) := [{"key": key, "row": row, "kind": kind, "figure": figure, "cells": measure.cell(figure, kind)} |
	some kind, figure in row.figures
	_lacks_unit(figure)
	not _is_nominal(row, kind)
	key := concat("|", [row.sheet, object.get(row, "table", ""), kind])
]

_lacks_unit(figure) if replace(figure.problem, " ", "-") == "no-unit"

# "2 x 8" is the name of a size of lumber, which has no unit.
_is_nominal(row, "thickness_mm") if {
	_is_lumber(row)
	regex.match(data.data.cells.nominal, row.figures.thickness_mm.text)
}

_is_lumber(row) if row.role == "lumber"

_is_lumber(row) if facts.main_items(row)[0].class == "lumber"

_message(hit) := sprintf("the %s \"%s\" has no unit, so nothing was held against it", [
	object.get(data.lib.measures.names, hit.kind, hit.kind),
	hit.figure.text,
])
