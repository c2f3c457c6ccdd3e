# METADATA
# title: Built in before it was approved
# description: |
#   The material goes on before its submittal is back or approved. If the review changes the product, what is on the
#   wall comes off again, with the face it stuck to. A date of return counts where the log also tells when the
#   submittal was sent. It does not apply to the same day, nor to a cell that is still empty.
# custom:
#   id: sequence-approved-later
#   topic: sequence
#   severity: warning
#   reason: What is built in before it is approved is at the builder's risk, and is pulled off if the answer is no.
#   remedy: Wait for the answer, or ask for leave to go ahead in writing.
#   source: "common practice: no material is built in before its submittal is approved"
#   basis: common-practice
#   example: "Approved 20 May 2027, installed 3 May 2027"
package sequence.approved_later

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.turn

findings contains finding.at(line, ["install", back], message) if {
	some line in facts.live_lines
	back := _back(line)
	turn.before(line, "install", back)
	message := naming.say("%s goes on %s, before its submittal %s on %s", [
		_name(line),
		turn.told(line, "install"),
		_verbs[back],
		turn.told(line, back),
	])
}

_back(line) := "approved" if {
	line.dates.approved.from != ""
} else := "returned" if {
	line.dates.sent.from != ""
	not turn.before(line, "returned", "sent")
}

_verbs := {"approved": "is approved", "returned": "is back"}

_name(line) := naming.plain(facts.main_items(line)[0])

default _name(_) := "the material"
