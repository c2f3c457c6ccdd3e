# METADATA
# title: Back before it was sent
# description: |
#   The submittal of a row came back, or was approved, before it went out: two cells swapped, or a slip of the month.
#   Whoever reads the log cannot tell whether the product of the row was looked at. It does not apply to the same
#   day, nor to a cell that is still empty.
# custom:
#   id: data-back-early
#   topic: data
#   severity: error
#   reason: What was not sent cannot come back; one of the dates is wrong, and the approval is in doubt.
#   remedy: Look up the transmittals and put the dates right.
#   source: the row itself
#   basis: source-read
#   example: "Sent 15 Mar 2027, returned 2 Mar 2027"
package data.back_early

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.turn

findings contains finding.at(line, ["sent", back], message) if {
	some line in facts.live_lines
	back := [slot | some slot, _ in _verbs; turn.before(line, slot, "sent")][0]
	message := naming.say("the submittal of %s %s on %s, before it was sent on %s", [
		naming.row(line),
		_verbs[back],
		turn.told(line, back),
		turn.told(line, "sent"),
	])
}

_verbs := {"approved": "was approved", "returned": "came back"}
