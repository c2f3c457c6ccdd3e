# METADATA
# title: Waiver that cannot be used
# description: |
#   A waiver lacks its rule, its reason, who accepted it or until when, names no line, or names a rule that does not
#   exist. It waives nothing until it is mended. A workbook or cell that could not be read cannot be waived. It does
#   not apply where the reference or the material is left out, which a waiver may lack.
# custom:
#   id: data-waiver-bad
#   topic: data
#   severity: warning
#   reason: An acceptance without a reason, a role and a date is no record, and nobody can hold it against the work.
#   remedy: Complete the waiver, or take it out.
#   source: the waiver's own words
#   basis: source-read
#   example: "a waiver with a reason and a role, but without a date"
package data.waiver_bad

import data.lib.finding

findings contains finding.for_address(waiver.at, message, {}) if {
	some waiver in input.waivers
	waiver.state == "bad"
	message := sprintf("%s does not hold: %s", [waiver.name, waiver.problem])
}
