# METADATA
# title: VOC over the project's limit
# description: |
#   A primer, sealant or adhesive that the schedule uses has more volatile organic compounds than the notes allow.
#   The pail is turned back at the gate or breaks the local rule, and a substitute is bought in haste; two years
#   later the air credit of the building is argued about. It does not apply to a figure exactly on the limit, nor
#   to a product that no live row uses.
# custom:
#   id: performance-voc-limit
#   topic: performance
#   severity: error
#   looks: across rows
#   reason: The product has more VOC than the project allows on site.
#   remedy: Use a product within the limit that the sheet's data lists, and check its minimum temperature.
#   source: the project's notes
#   basis: source-read
#   example: "PR-4: 420 g/L; the notes allow primers 250 g/L"
package performance.voc_limit

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.uses

findings contains found if {
	some product in input.products
	figure := product.figures.voc_gl
	measure.is_sound(figure)
	_is_over_some(measure.high(figure))
	over := _over(product, figure)
	count(over) > 0
	not _is_of_one_row(over)
	limit := over[0].limit
	found := finding.for_product(product, measure.cell(figure, "voc_gl"), _message(product, figure, limit), {
		"related": array.concat(uses.related(over, 0), [finding.related_address(limit.at, limit.text)]),
	})
}

# What only one row is made of is told at the row, where another product would be chosen.
findings contains found if {
	some product in input.products
	figure := product.figures.voc_gl
	measure.is_sound(figure)
	_is_over_some(measure.high(figure))
	over := _over(product, figure)
	_is_of_one_row(over)
	limit := over[0].limit
	found := finding.at_with(over[0].line, [over[0].item.at.cell], _message(product, figure, limit), {
		"related": [finding.related_product(product, ["voc"], "its data"), finding.related_address(limit.at, limit.text)],
	})
}

_over(product, figure) := [{"line": use.line, "item": use.item, "limit": limit} |
	some use in uses.of(product)
	limit := limits.lowest_max(_everywhere(limits.limits_for("voc_gl", use.line, product.keys, product.role)))
	measure.high(figure) > limit.max * (1 + data.performance.voc.share)
]

_is_of_one_row(uses) if {
	count({use.line.id | some use in uses}) == 1
	uses[0].item.slot in {"material", "tag"}
}

# Nor is what one row chose otherwise than the other rows of its sheet did.
_is_of_one_row(uses) if {
	count({use.line.id | some use in uses}) == 1
	use := uses[0]
	use.item.slot in data.performance.voc.chosen_slots
	some other in facts.live_lines
	other.id != use.line.id
	_own_product(other) == _own_product(use.line)
	some beside in facts.items_in(other, [use.item.slot])
	beside.product != ""
	beside.product != use.item.product
}

_own_product(line) := product if {
	product := facts.main_items(line)[0].product
	product != ""
}

# A limit for a place or a case ("indoors") is broken by the row, and not by the product.
findings contains found if {
	some product in input.products
	figure := product.figures.voc_gl
	measure.is_sound(figure)
	_is_over_some(measure.high(figure))
	some use in uses.of(product)
	limit := limits.lowest_max(_somewhere(limits.limits_for("voc_gl", use.line, product.keys, product.role)))
	measure.high(figure) > limit.max * (1 + data.performance.voc.share)
	found := finding.at_with(use.line, [use.item.at.cell], sprintf("%s there", [_message(product, figure, limit)]), {
		"related": [finding.related_product(product, ["voc"], "its data"), finding.related_address(limit.at, limit.text)],
	})
}

_everywhere(list) := [limit | some limit in list; not _is_narrowed(limit)]

_somewhere(list) := [limit | some limit in list; _is_narrowed(limit)]

_is_narrowed(limit) if {
	is_array(limit.when)
	count(limit.when) > 0
}

_is_narrowed(limit) if limits.is_near(limit.scope)

# Most products keep every limit of the project, wherever it holds: that is asked first.
_is_over_some(value) if {
	some limit in limits.by_kind.voc_gl
	is_number(limit.max)
	value > limit.max
}

_message(product, figure, limit) := sprintf("%s has %s VOC; the notes allow %s", [
	product.tag,
	measure.as_said("voc", figure),
	measure.written(limit.max, "voc", figure),
])
