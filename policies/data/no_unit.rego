# METADATA
# title: Figure without a unit
# description: |
#   The cell begins with a figure, and neither the cell nor its heading tells the unit. Nothing was checked against it.
# custom:
#   id: data-no-unit
#   topic: data
#   severity: note
#   reason: 40 may be mil, degrees or days; a bare figure is not guessed.
#   remedy: Write the unit beside the figure or in the heading.
#   source: common practice
#   basis: common-practice
#   example: "thickness: 40"
package data.no_unit

import data.lib.facts
import data.lib.finding
import data.lib.measure

findings contains finding.at(line, measure.cell(figure, kind), _message(kind, figure)) if {
	some line in facts.live_lines
	some kind, figure in line.figures
	_lacks_unit(figure)
}

findings contains finding.for_product(product, measure.cell(figure, kind), _message(kind, figure), {}) if {
	some product in input.products
	some kind, figure in product.figures
	_lacks_unit(figure)
}

_lacks_unit(figure) if replace(figure.problem, " ", "-") == "no-unit"

_message(kind, figure) := sprintf("the %s \"%s\" has no unit, so nothing was held against it", [
	object.get(data.lib.measures.names, kind, kind),
	figure.text,
])
