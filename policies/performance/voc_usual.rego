# METADATA
# title: VOC over the usual limit
# description: |
#   The project states no limit, and the product has more than many states and provinces allow. Worth a look at
#   the local rule before it is bought: limits differ by place, by date and by what the product is sold as (a
#   primer for sealants may have far more than an adhesive primer). It does not apply where the notes state a
#   limit, which is held instead, nor to a product that no live row uses.
# custom:
#   id: performance-voc-usual
#   topic: performance
#   severity: note
#   reason: Many places limit the VOC of site-applied primers, sealants and adhesives.
#   remedy: Check the rule that holds where the job is.
#   source: South Coast rule 1168 in its older table and the Northeast model rule; partly from memory
#   basis: from-memory
#   example: "P-1: 420 g/L, and no limit is stated"
package performance.voc_usual

import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.uses

findings contains found if {
	some product in input.products
	figure := product.figures.voc_gl
	measure.is_sound(figure)
	usual := data.performance.voc.usual[product.role]
	measure.high(figure) > usual.max_gl * (1 + data.performance.voc.share)
	used := uses.of(product)
	count(used) > 0
	not _is_limited(product)
	message := sprintf("%s has %s VOC and the project states no limit; many places allow %s", [
		product.tag,
		measure.as_said("voc", figure),
		usual.says,
	])
	found := finding.for_product(product, measure.cell(figure, "voc_gl"), message, {"related": uses.related(used, 0)})
}

# A limit for some rows only is one that the project states.
_is_limited(_) if {
	some limit in limits.by_kind.voc_gl
	object.get(limit, "roles", null) in [null, []]
}

_is_limited(product) if {
	some limit in limits.by_kind.voc_gl
	product.role in limit.roles
}
