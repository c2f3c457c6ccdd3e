# METADATA
# title: The order of two dates
# description: Which of two dates of a line comes first; spans that overlap and dates that are not known have no order.
package lib.turn

# before: one date of the line lies surely before another.
before(line, first, second) if {
	_end(line.dates[first]) < line.dates[second].from
}

_end(day) := day.to if day.to != ""

_end(day) := day.from if {
	day.to == ""
	day.from != ""
}

# told writes a date of the line.
told(line, slot) := data.lib.words.date_range(line.dates[slot].from, _end(line.dates[slot]))
