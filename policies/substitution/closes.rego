# METADATA
# title: Vapor-tight neighbor of a permeable sheet
# description: |
#   The sheet of the row lets vapor through, and what lies against it changed from an open material to a tight
#   one: foil-faced board where mineral wool was specified. The sheet may still be the one specified, and after
#   two winters the sheathing behind it is wet. It does not apply to a sheet that is tight itself, which loses
#   nothing, nor to a row whose specified neighbor was tight already.
# custom:
#   id: substitution-closes
#   topic: substitution
#   severity: warning
#   reason: A tight layer over a permeable sheet takes away the drying that the sheet was chosen for.
#   remedy: Go back to the vapor-open material, or have the wall's moisture balance looked at again.
#   source: common practice of enclosure design
#   basis: common-practice
#   example: "foil-faced board over a permeable sheet in place of mineral wool"
package substitution.closes

import data.lib.facts
import data.lib.swap

findings contains found if {
	some one in swap.all
	not one.swap.slot in {"material", "tag"}
	not _has(one.swap.was, data.substitution.tight)
	_has(one.swap.now, data.substitution.tight)
	some item in facts.main_items(one.line)
	_is_open(item)
	message := sprintf("%s is vapor-tight and closes the permeable sheet %s", [swap.names(one.swap), item.text])
	found := swap.at(one, message, "warning")
}

_has(offer, keys) if {
	some key in offer.keys
	key in keys
}

_is_open(item) if _has(item, data.substitution.open)

_is_open(item) if facts.product_of(item).figures.vapor_ng.min >= data.substitution.vapor.permeable_min_ng
