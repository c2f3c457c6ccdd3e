# METADATA
# title: Row's sheet passes more air than allowed
# description: |
#   The same limit as for products, 0.02 L/(s·m²) or 0.004 cfm/ft² at 75 Pa, where the row itself states the
#   figure. A leaky sheet brings room air to the cold side; by the second winter it shows as stains and frost.
#   Check the unit first: the same digits in the other unit are five times as much. It does not apply to a row
#   whose product data is over the limit, which is told at the product.
# custom:
#   id: performance-air-permeance-row
#   topic: performance
#   severity: error
#   reason: A sheet that passes more air than a material may is no air barrier, however well its joints are sealed.
#   remedy: Use a sheet with a test report at or under the limit, or correct the figure and its unit.
#   source: the project's notes; else ASTM E2178 at 75 Pa as the energy codes take it
#   basis: source-read
#   example: "air barrier sheet with 0.035 L/(s·m²) at 75 Pa"
package performance.air_row

import data.lib.air
import data.lib.facts
import data.lib.finding
import data.lib.measure

findings contains found if {
	some line in facts.live_lines
	figure := line.figures.air_lsm2
	measure.is_sound(figure)
	item := facts.main_items(line)[0]
	air.is_sheet(item, line.role)
	not _is_told(line, item)
	limit := air.excess(line, item.keys, line.role, measure.high(figure))
	slots := array.concat(["material"], measure.cell(figure, "air_lsm2"))
	found := finding.at_with(line, slots, _message(item, figure, limit), {"severity": limit.severity})
}

_is_told(line, item) if {
	product := facts.product_of(item)
	air.excess(line, product.keys, product.role, measure.high(product.figures.air_lsm2))
}

_message(item, figure, limit) := sprintf("%s is scheduled with an air permeance of %s, but %s%s", [
	item.text,
	measure.as_said("air", figure),
	limit.says,
	air.mistaken(measure.high(figure), limit),
])
