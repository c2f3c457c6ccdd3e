# METADATA
# title: The row says that the makers have not answered
# description: |
#   Whether two makers' products live together is known from a letter or a test of the two, not from their kinds. Told
#   where the row's own words say that nobody has asked, or that no answer is there. It does not apply where the row
#   tells of a letter or report on file, nor to words of other matters, such as a delivery.
# custom:
#   id: contact-unanswered
#   topic: contact
#   severity: warning
#   reason: What oils, solvents and heat do to another maker's product shows after two summers, behind the cladding.
#   remedy: Ask both makers in writing, with the names of both products, or have the pair tested, before it is built.
#   source: ASTM C1087 and AAMA 713 for sealants with what they touch; common practice
#   basis: common-practice
#   example: "remark: no answer from either maker yet"
package contact.unanswered

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", said.slot, said.at.cell], message) if {
	some line in facts.live_lines
	facts.said(line, "answer_missing")
	not facts.said(line, "letter_on_file")
	said := [s | some s in line.signals; s.id == "answer_missing"; not s.no][0]
	message := naming.say("%s goes with another maker's product, and the row says that no answer is there (%s)", [
		naming.row(line),
		words.quoted(said.text),
	])
}
