# METADATA
# title: Product passes more air than allowed
# description: |
#   An air barrier sheet is judged by its own test: 0.02 L/(s·m²) at 75 Pa, the same limit as 0.004 cfm/ft² at
#   1.57 psf. Material, assembly and building limits lie a factor of ten apart, and the same digits in the other
#   unit are five times apart, so a figure copied to the wrong column looks right. Two winters later there is
#   frost behind the cladding, and nobody finds the hole. It does not apply to claddings, insulation and sheets
#   said to be wind layers only.
# custom:
#   id: performance-air-permeance
#   topic: performance
#   severity: error
#   reason: A sheet that passes more air than a material may is no air barrier, however well its joints are sealed.
#   remedy: Use a sheet with a test report at or under the limit, or correct the figure and its unit.
#   source: the project's notes; else ASTM E2178 at 75 Pa as the energy codes take it
#   basis: source-read
#   example: "AB-4: 0.04 cfm/ft²; the notes allow 0.004 cfm/ft²"
package performance.air_product

import data.lib.air
import data.lib.finding
import data.lib.measure
import data.lib.uses

findings contains found if {
	some product in input.products
	figure := product.figures.air_lsm2
	measure.is_sound(figure)
	air.is_sheet(product, product.role)
	air.is_over_some(measure.high(figure))
	over := [use |
		some use in uses.main(product)
		air.excess(use.line, product.keys, product.role, measure.high(figure))
	]
	count(over) > 0
	limit := air.limit(over[0].line, product.keys, product.role)
	found := finding.for_product(product, measure.cell(figure, "air_lsm2"), _message(product, figure, limit), {
		"severity": limit.severity,
		"related": array.concat(uses.related(over, 0), _note(limit)),
	})
}

_note(limit) := [finding.related_address(at, limit.text) | at := limit.at]

_message(product, figure, limit) := sprintf("%s has an air permeance of %s, but %s%s", [
	product.tag,
	measure.as_said("air", figure),
	limit.says,
	air.mistaken(measure.high(figure), limit),
])
