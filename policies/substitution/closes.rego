# METADATA
# title: Vapor-tight neighbor of a permeable sheet
# description: |
#   The sheet of the row lets vapor through, and what lies against it changed from an open material to a tight
#   one: foil-faced board where mineral wool was specified. The sheet may still be the one specified, and after
#   two winters the sheathing behind it is wet. It does not apply to a sheet that is tight itself, which loses
#   nothing, nor to a row whose specified neighbor was tight already. The same is told of a film that stays tight all
#   year in place of a smart retarder, which was chosen because it opens when the wall is damp.
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
import data.lib.finding
import data.lib.naming
import data.lib.swap
import data.lib.words

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

# Polyethylene for the film that opens in summer: the wall dries to the outside alone from then on.
findings contains found if {
	some one in swap.own
	_has(one.swap.was, data.substitution.responsive)
	not _has(one.swap.now, data.substitution.responsive)
	_has(one.swap.now, data.substitution.stays_tight)
	message := sprintf("%s stays tight when the wall is damp, which then dries no more to the room", [
		swap.names(one.swap),
	])
	found := swap.at(one, message, "warning")
}

# The same where the row gives what was specified in words, and not by a product.
findings contains found if {
	some line in facts.live_lines
	not facts.said(line, "change_accepted")
	regex.match(data.substitution.responsive_words, lower(line.texts.specified))
	item := facts.main_items(line)[0]
	not _has(item, data.substitution.responsive)
	_has(item, data.substitution.stays_tight)
	not line.id in {one.line.id | some one in swap.own}
	message := naming.say("%s in place of %s stays tight when the wall is damp, which then dries no more to the room", [
		naming.plain(item),
		words.quoted(line.texts.specified),
	])
	found := finding.at(line, ["material", "tag", "specified"], message)
}

_has(offer, keys) if {
	some key in offer.keys
	key in keys
}

_is_open(item) if _has(item, data.substitution.open)

_is_open(item) if facts.product_of(item).figures.vapor_ng.min >= data.substitution.vapor.permeable_min_ng
