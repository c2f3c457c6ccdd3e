# METADATA
# title: Lower bound above upper bound
# description: |
#   20 for -20, or two columns exchanged: the low end of a range lies above its high end. Whatever is held against
#   it gives the wrong answer, so the sheet may go on too cold with the paper in order. Limits in the notes and
#   figures of products are looked at, used or not, since the data itself is wrong. It does not apply to rows of
#   the schedule, only to product data and notes; a range whose ends are equal is right.
# custom:
#   id: data-range-reversed
#   topic: data
#   severity: error
#   reason: A range that ends before it begins allows nothing; a sign or a digit is lost.
#   remedy: Ask for both bounds, and mind the minus sign.
#   source: arithmetic
#   basis: common-practice
#   example: "put on from 40 °F, at most 25 °F"
package data.range_reversed

import data.lib.finding
import data.lib.measure

findings contains finding.for_product(product, measure.cell(figure, kind), message, {}) if {
	some product in input.products
	some kind, figure in product.figures
	_is_reversed(figure)
	message := sprintf("%s: the %s \"%s\" ends below its beginning", [product.tag, _name(kind), figure.text])
}

findings contains finding.for_product(product, cells, message, {}) if {
	some product in input.products
	some order in data.data.contradict.orders
	low := product.figures[order.low]
	high := product.figures[order.high]
	measure.low(low) > measure.high(high)
	cells := array.concat(measure.cell(low, order.low), measure.cell(high, order.high))
	said := [measure.as_said("temperature", figure) | some figure in [low, high]]
	message := sprintf("%s: %s", [product.tag, sprintf(order.says, said)])
}

findings contains finding.for_address(limit.at, message, {}) if {
	some limit in input.project.limits
	_is_reversed(limit)
	message := sprintf("the limit \"%s\" ends below its beginning", [limit.text])
}

_name(kind) := object.get(data.lib.measures.names, kind, kind)

# null is less than any number, so both must be there.
_is_reversed(bounds) if {
	is_number(bounds.min)
	is_number(bounds.max)
	bounds.min > bounds.max
}
