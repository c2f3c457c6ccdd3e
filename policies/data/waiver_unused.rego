# METADATA
# title: Waiver without a finding
# description: |
#   No finding of this rule stands at the line that the waiver names: it was mended, the mark or the material was
#   written otherwise, or the line is gone. It does not apply to waivers of substitutions in a check, nor to the
#   others in a comparison, where they are not looked at.
# custom:
#   id: data-waiver-unused
#   topic: data
#   severity: note
#   reason: An acceptance that nothing needs hides the next mistake at the same mark.
#   remedy: Take the waiver out, or correct the rule, mark, place or material in it.
#   source: the waiver's own words
#   basis: source-read
#   example: "a waiver for W-3 that has become W-4"
package data.waiver_unused

import data.lib.finding

findings contains finding.for_address(waiver.at, message, {}) if {
	some waiver in input.waivers
	waiver.state == "unused"
	message := sprintf("%s accepts nothing: there is no such finding", [waiver.name])
}
