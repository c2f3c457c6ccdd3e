# METADATA
# title: Substrate lost
# description: |
#   The specified product takes the substrate of this row, and the data of the offered one does not list it; if
#   the bond fails in two years, the data sheet is the first thing that is read. Substrates that this row does not
#   need are told as a note, since the product may be moved to them later. It does not apply to data that lists no
#   substrate at all, which says nothing.
# custom:
#   id: substitution-substrate
#   topic: substitution
#   severity: warning
#   reason: A product is good for the substrates its data lists; on others nothing is tested and nothing is warranted.
#   remedy: Keep the specified product on this substrate, or bring the maker's letter and a bond test for it.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a sheet for framed walls offered on cast concrete"
package substitution.substrate

import data.lib.naming
import data.lib.swap
import data.lib.words

findings contains found if {
	some one in swap.compared
	here := {naming.uncapped(l.text) | some l in one.swap.lost; l.here}
	count(here) > 0
	message := sprintf("%s: its data does not list %s, the substrate of this row", [
		swap.names(one.swap),
		words.list(sort(here)),
	])
	found := swap.at(one, message, "warning")
}

findings contains found if {
	some one in swap.compared
	not _is_here(one)
	lost := {naming.uncapped(l.text) | some l in one.swap.lost}
	count(lost) > 0
	message := sprintf("%s: its data leaves out %s, which this row does not need", [
		swap.names(one.swap),
		words.list(sort(lost)),
	])
	found := swap.at(one, message, "note")
}

_is_here(one) if {
	some l in one.swap.lost
	l.here
}
