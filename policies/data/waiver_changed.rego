# METADATA
# title: Waiver of a line that has changed
# description: |
#   The waiver was given for what the line said then. The line, its product data or a row that takes part says
#   something else now, so the finding is back. It does not apply where rows were only moved or lettered anew.
# custom:
#   id: data-waiver-changed
#   topic: data
#   severity: warning
#   reason: What was accepted was another material, date or neighbor.
#   remedy: Look at the line again; accept it anew with the content key that the message gives, or take the waiver out.
#   source: the waiver's own words
#   basis: source-read
#   example: "the accepted sheet was swapped for another one"
package data.waiver_changed

import data.lib.finding
import data.lib.words

findings contains finding.for_address(waiver.at, message, {}) if {
	some waiver in input.waivers
	waiver.state == "changed"
	message := sprintf("%s no longer holds: what it was given for has changed (content was %s, is %s)", [
		waiver.name,
		waiver.texts.content,
		words.list(waiver.now),
	])
}
