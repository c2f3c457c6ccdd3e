# METADATA
# title: Waiver that does not say what the line held
# description: |
#   The waiver holds, but for whatever the line will say, since it does not give the content key of the line. With
#   the key it comes back by itself once the line changes. It does not apply to a waiver with a key, such as those
#   that check writes with --accept-as-is.
# custom:
#   id: data-waiver-loose
#   topic: data
#   severity: note
#   reason: A line that is changed after it was accepted should be looked at again.
#   remedy: Write the content key that the message gives into the waiver.
#   source: the waiver's own words
#   basis: source-read
#   example: "a waiver by hand, with a mark and no content key"
package data.waiver_loose

import data.lib.finding
import data.lib.words

findings contains finding.for_address(waiver.at, message, {}) if {
	some waiver in input.waivers
	waiver.state == "loose"
	message := sprintf("%s holds whatever the line says; give it the content %s so that it ends when the line changes", [
		waiver.name,
		words.list(waiver.now),
	])
}
