# METADATA
# title: Primed after the sheet
# description: |
#   The date of priming lies after that of the sheet: two cells swapped, or one column of the programme moved. A
#   sheet goes on a primed and dry face; put on a bare one, it is off the wall in two years with the dust on its
#   back. It does not apply to the same day, nor to ranges that overlap.
# custom:
#   id: sequence-primed-after
#   topic: sequence
#   severity: error
#   reason: Primer goes under the sheet; one of the two dates is wrong.
#   remedy: Ask for the right dates.
#   source: the row itself
#   basis: source-read
#   example: "Primed 12 May, sheet 10 May"
package sequence.primed_after

import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains finding.at(line, ["prime", "install"], message) if {
	some line in sheet.lines
	span := line.spans.prime_gap_days
	span.max < 0
	message := naming.say("the primer goes on %s after the sheet (sheet %s, primer %s)", [
		words.days(0 - span.max),
		words.date(span.to),
		words.date(span.from),
	])
}
