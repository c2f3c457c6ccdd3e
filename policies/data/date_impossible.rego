# METADATA
# title: Date that does not exist
# description: |
#   A slip of the pen, or text from another program that no one read back. The season, the days in the sun and the
#   order of work cannot be checked until it is put right, so a winter start or a long bare span passes unseen.
#   Dates of concrete told elsewhere are looked at as well. It does not apply to days that exist and are only
#   unlikely, nor to words such as 'to follow'.
# custom:
#   id: data-date-impossible
#   topic: data
#   severity: error
#   reason: The date is on no calendar, so neither season nor days in the sun can be checked.
#   remedy: Ask for the date that was meant.
#   source: the calendar
#   basis: common-practice
#   example: "installation 31 Jun 2026"
package data.date_impossible

import data.lib.facts
import data.lib.finding

findings contains finding.at(line, [_cell(day, slot)], message) if {
	some line in facts.live_lines
	some slot, day in line.dates
	day.state == "impossible"
	message := sprintf("the %s date \"%s\" does not exist", [_name(slot), day.text])
}

findings contains finding.for_address(pour.at, message, {}) if {
	some pour in input.pours
	pour.placed.state == "impossible"
	message := sprintf("the placing date \"%s\" of %s does not exist", [pour.placed.text, pour.name])
}

_name(slot) := object.get(data.data.dates.names, slot, slot)

_cell(day, _) := day.at.cell if object.get(day, ["at", "cell"], "") != ""

_cell(day, slot) := slot if object.get(day, ["at", "cell"], "") == ""
