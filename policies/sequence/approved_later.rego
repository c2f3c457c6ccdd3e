# METADATA
# title: Built in before it was approved
# description: |
#   The material goes on before its submittal is back or approved. If the review changes the product, what is on the
#   wall comes off again, with the face it stuck to. A date of return counts where the log also tells when the
#   submittal was sent. A mock-up that comes after the work is no better: what it shows is built already. It does not
#   apply to the same day, to a cell that is still empty, nor to the row of the mock-up itself.
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

# The mock-up of the work comes after its end: it can teach the work nothing.
findings contains finding.at(line, ["install", line.dates.mockup.at.cell], message) if {
	some line in facts.live_lines
	_end(line) < line.dates.mockup.from
	not regex.match(data.sequence.mockup.own, lower(concat(" ", [line.place, line.group, line.mark])))
	message := naming.say("%s goes on %s, before its mock-up on %s", [
		_name(line),
		turn.told(line, "install"),
		turn.told(line, "mockup"),
	])
}

_end(line) := line.dates.finish.from if {
	line.dates.finish.from != ""
} else := line.dates.install.to if {
	line.dates.install.to != ""
} else := line.dates.install.from if {
	line.dates.install.from != ""
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
