# METADATA
# title: Waiver that has expired
# description: |
#   The last day of the waiver is past, so that what it accepted counts again. The days are counted by the clock of
#   the run, or by the day that --on names. It does not apply on the last day itself, on which the waiver still
#   holds.
# custom:
#   id: data-waiver-expired
#   topic: data
#   severity: warning
#   reason: An acceptance is given for a time, until a test, a letter or a change of the schedule.
#   remedy: Have it accepted anew with a later day, or mend the line, and take the waiver out.
#   source: the waiver's own words
#   basis: source-read
#   example: "until 31 Jan 2027, judged on 1 Feb 2027"
package data.waiver_expired

import data.lib.finding

findings contains finding.for_address(waiver.at, message, {}) if {
	some waiver in input.waivers
	waiver.state == "expired"
	message := sprintf("%s held until %s and has expired", [waiver.name, waiver.until])
}
