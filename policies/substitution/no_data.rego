# METADATA
# title: Not in the product data
# description: |
#   A product is offered that the product data of the submittal does not hold, so that nothing can be compared: a
#   thinner sheet, or one that only goes on in warmer weather, would pass unseen until its second winter. Ask for
#   its data sheet. It does not apply where the specified product has no data either, nor to words that name a
#   kind of material instead of a product.
# custom:
#   id: substitution-no-data
#   topic: substitution
#   severity: warning
#   reason: With no data nothing shows that the offer is equal in temperature, exposure, permeance, substrate or primer.
#   remedy: Ask for the data sheet and the test report of the offered product.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "an edge strip offered that no data sheet describes"
package substitution.no_data

import data.lib.swap

findings contains found if {
	some one in swap.all
	not one.swap.same
	one.swap.was.data
	not one.swap.now.data
	one.swap.now.family == ""
	_matters(one.swap)
	message := sprintf("%s is not in the product data, so nothing shows that it is equal", [swap.names(one.swap)])
	found := swap.at(one, message, "warning")
}

_matters(s) if s.slot in {"material", "tag", "primer", "sealant"}
