# METADATA
# title: Date that was not understood
# description: |
#   The cell has figures or a month in it, as a date has, and no calendar date could be read, so neither season
#   nor days in the sun were checked for the row. Write the date with the month as a word or as year-month-day. In
#   rows that are no sheet it is a note. It does not apply to words such as 'left open' or 'with layer 3', which
#   are no dates.
# custom:
#   id: data-date-unread
#   topic: data
#   severity: warning
#   reason: Without the date neither season nor days in the sun can be checked.
#   remedy: Write the date with day, month and year, or a dash where there is none.
#   source: common practice
#   basis: common-practice
#   example: "installed: 13/32/26?"
package data.date_unread

import data.lib.facts
import data.lib.finding

findings contains finding.at_with(line, [slot], message, {"severity": _severity(line)}) if {
	some line in facts.live_lines
	some slot in data.data.dates.needed
	day := line.dates[slot]
	day.state == "unknown"
	regex.match(data.data.dates.looks_like_date, lower(day.text))
	message := sprintf("\"%s\" was not understood as the %s date", [day.text, data.data.dates.names[slot]])
}

_severity(line) := "warning" if line.role in data.data.dates.roles

_severity(line) := "note" if not line.role in data.data.dates.roles
