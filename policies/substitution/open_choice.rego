# METADATA
# title: Product left open without a measure
# description: |
#   The row lets whoever buys choose another product, and neither the row nor the notes say by what it must be equal.
#   What comes then is what is in stock: thinner, tighter to vapor, good for fewer days in the sun, and untried with its
#   neighbors, which shows after the first winters. It does not apply where the choice is bound to an approval or a
#   submittal, nor where the row or the notes say that no property may be worse.
# custom:
#   id: substitution-open-choice
#   topic: substitution
#   severity: warning
#   reason: An equal that nothing is held against is any product.
#   remedy: |
#     Name the product, or the figures and tests that another must keep (film, permeance, days open, temperature,
#     neighbors), and that it is submitted first.
#   source: common practice of specifications (an or-equal needs its salient properties)
#   basis: common-practice
#   example: "remark: any similar sheet is ok"
package substitution.open_choice

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", said.slot, said.at.cell], message) if {
	some line in facts.live_lines
	facts.said(line, "open_choice")
	not _is_bound(line)
	said := [s | some s in line.signals; s.id == "open_choice"; not s.no][0]
	message := naming.say("%s may be another product (%s), and nothing says by what it must be equal", [
		naming.row(line),
		words.quoted(said.text),
	])
}

_is_bound(line) if facts.said_here(line, "equal_or_better")

_is_bound(line) if facts.said(line, "change_accepted")
