# METADATA
# title: Weekday and date do not match
# description: |
#   A row names a weekday with its date, and the date falls on another. Often the year or the order of day and
#   month is wrong, which moves the work into another season and past its limits of cold or sun. Check both
#   against the programme. It does not apply to a weekday that stands apart from any date, as in 'poured on
#   Mondays'.
# custom:
#   id: data-weekday-off
#   topic: data
#   severity: warning
#   reason: One of the two is wrong, and the weekday may tell which date was meant.
#   remedy: Ask which is meant.
#   source: the calendar
#   basis: common-practice
#   example: "Mon 6/2/2026 is a Tuesday"
package data.weekday_off

import data.lib.facts
import data.lib.finding

findings contains finding.at(line, [day.at.cell], message) if {
	some line in facts.live_lines
	some slot, day in line.dates
	regex.match(data.data.dates.weekday_words, object.get(day, "note", ""))
	message := sprintf("the weekday in \"%s\" does not fall on that date (%s)", [
		day.text,
		object.get(data.data.dates.names, slot, slot),
	])
}
