# METADATA
# title: Better than specified
# description: |
#   What the offered product does better than the specified one, so that the reviewer sees both sides and the gain
#   is not lost in the list of losses two years later, when the choice is questioned. A note, never a failure. It
#   does not apply to figures that differ by rounding between units, to vapor permeance, of which neither more nor
#   less is better in itself, nor where one side states none.
# custom:
#   id: substitution-better
#   topic: substitution
#   severity: note
#   reason: A substitute that is better in one figure may be worth its losses in another.
#   remedy: Nothing to do; weigh it against what got worse.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a sheet good to 0 °F offered for one good to 20 °F"
package substitution.better

import data.lib.loss
import data.lib.swap

findings contains found if {
	some one in swap.all
	gained := loss.better(one)
	count(gained) > 0
	found := swap.at(one, swap.sentence(one.swap, gained), "note")
}
