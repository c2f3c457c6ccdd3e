# METADATA
# title: Worse than specified
# description: |
#   The offered product is worse in a figure than the one specified: thinner, leakier, of another vapor class,
#   with a warmer installation limit, a lower service temperature, fewer days in the sun or more VOC; what was
#   paid for in the specification is what fails first, in two years or ten. Both figures are told in the words of
#   their authors. A loss that this wall does not feel (the plan still fits the days allowed, the season is warm
#   enough, the project's limit is kept) is a note, unless the notes of the specified schedule ask for equal or
#   better. It does not apply to figures that differ by rounding between units, nor to a neighbor that has rows of
#   its own, where it is told.
# custom:
#   id: substitution-worse
#   topic: substitution
#   severity: warning
#   reason: The design was made with the specified figure; a substitute is equal only where it is no worse.
#   remedy: Ask for a product that is no worse, or have the designer accept the difference in writing.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a 32 mil sheet offered for a 40 mil sheet"
package substitution.worse

import data.lib.finding
import data.lib.loss
import data.lib.swap
import data.lib.words

findings contains found if {
	some one in swap.at_its_own_rows
	lost := loss.worse(one)
	count(lost) > 0
	parts := [l.text | some l in lost]
	message := concat("", [swap.sentence(one.swap, parts), _why(one)])
	found := swap.at(one, message, finding.worst([l.severity | some l in lost]))
}

_why(one) := sprintf("; the specified schedule asks for %s", [words.quoted(input.comparison.asks)]) if {
	some f in one.swap.figures
	loss.is_raised(one, f)
} else := ""
