# METADATA
# title: Dates of the work out of order
# description: |
#   The day the work is done lies before the day it begins, or it is inspected before it begins, or its material comes
#   to the site only after it is built in. A day, a month or a year is mistyped, or two cells are swapped, and days in
#   the sun, age of concrete and season are counted from a wrong date. The same day is fine, and so is a delivery within
#   the week that a Monday stands for. It does not apply to rows that give one of the dates only.
# custom:
#   id: data-work-dates
#   topic: data
#   severity: error
#   reason: >-
#     Work cannot end, nor be inspected, before it begins, nor begin before its material is there; one date is wrong,
#     and all that is counted from it.
#   remedy: Ask for the right dates, and check the row again with them.
#   source: the row itself
#   basis: source-read
#   example: "Start 16 Jun 2027, done 6 Jun 2027"
package data.work_dates

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.turn
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

findings contains found if {
	some line in facts.live_lines
	line.spans.site_days.max < 0
	message := naming.say("%s goes on %s, before it is on site on %s", [
		naming.row(line),
		turn.told(line, "install"),
		turn.told(line, "delivered"),
	])
	found := finding.at(line, ["install", "delivered"], message)
}
