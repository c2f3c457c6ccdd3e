# METADATA
# title: Not in the product data
# description: |
#   A product is offered that the product data of the submittal does not hold, so that nothing can be compared: a
#   thinner sheet, or one that only goes on in warmer weather, would pass unseen until its second winter. Ask for
#   its data sheet. It does not apply where the specified product has no data either, nor to words that name a
#   kind of material instead of a product, nor to a row whose remark tells the data of what it offers.
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

import data.lib.facts
import data.lib.swap

findings contains found if {
	some one in swap.all
	not one.swap.same
	one.swap.was.data
	not one.swap.now.data
	one.swap.now.family == ""
	_matters(one.swap)
	not _tells_itself(facts.lines_by_id[one.pair.line])
	message := sprintf("%s is not in the product data, so nothing shows that it is equal", [swap.names(one.swap)])
	found := swap.at(one, message, "warning")
}

_matters(s) if s.slot in {"material", "tag", "primer", "sealant"}

# "offered: 28 perms, 120 days, 25 F and up, 0.002 cfm/sf".
_tells_itself(line) if {
	said := object.get(line.texts, "remark", "")
	regex.match(data.substitution.told.offered, said)
	told := [kind | some kind in data.substitution.told.kinds; regex.match(kind, said)]
	count(told) >= data.substitution.told.least
}
