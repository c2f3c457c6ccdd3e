# METADATA
# title: Covered before it is installed
# description: |
#   The cover date lies before the date of installation: a slip of the year, two cells swapped, or a programme
#   that was moved in one column only. The days in the sun cannot be counted, and a sheet that is left bare too
#   long leaks in its second or third year. It does not apply to the same day, nor to a range that overlaps.
# custom:
#   id: sequence-cover-first
#   topic: sequence
#   severity: error
#   reason: What is not there cannot be covered; one date is wrong, and neither season nor days can be checked.
#   remedy: Ask for the right dates, and check the row again with them.
#   source: the row itself
#   basis: source-read
#   example: "Installed 10 Jun 2027, covered 3 Jun 2027"
package sequence.cover_first

import data.lib.bare
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	span := line.spans.bare_days
	span.max < 0
	message := naming.say("the cover date of %s, %s, lies %s before %s on %s", [
		naming.row(line),
		words.date(span.to),
		words.days(0 - span.max),
		_begins(line, span),
		words.date(span.from),
	])
	found := finding.at_with(line, ["install", "cover"], message, {"related": bare.related(line)})
}

# The days of what came wrapped from a shop begin with the day on which it is set.
_begins(line, span) := "it was set or unwrapped" if {
	line.dates.unwrapped.from == span.from
} else := "its installation"
