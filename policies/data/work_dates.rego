# METADATA
# title: Dates of the work out of order
# description: |
#   The day the work is done lies before the day it begins, or it is inspected before it begins. A day, a month or a
#   year is mistyped, or two cells are swapped, and days in the sun, age of concrete and season are counted from a
#   wrong date. The same day is fine. It does not apply to rows that give one of the dates only.
# custom:
#   id: data-work-dates
#   topic: data
#   severity: error
#   reason: Work cannot end, nor be inspected, before it begins; one date is wrong, and all that is counted from it.
#   remedy: Ask for the right dates, and check the row again with them.
#   source: the row itself
#   basis: source-read
#   example: "Start 16 Jun 2027, done 6 Jun 2027"
package data.work_dates

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	some slot, order in data.data.dates.orders
	span := line.spans[order.span]
	span.max < 0
	message := naming.say("%s is %s on %s, %s before it begins on %s", [
		naming.row(line),
		order.says,
		words.date(span.to),
		words.days(0 - span.max),
		words.date(span.from),
	])
	found := finding.at(line, ["install", slot], message)
}
