# METADATA
# title: Put on below its least temperature, as read on the day
# description: |
#   The row gives the temperature of the work, as read or as expected on the day, and the data of the sheet, primer
#   or sealant asks for more. What is put on too cold does not wet the wall: it holds for the test and lets go in the
#   second winter. It does not apply where the row tells of heat and only the air is given, which may be outside of the
#   tent. Of a range (the low and the high of the day) the top counts.
# custom:
#   id: temperature-read-below
#   topic: temperature
#   severity: error
#   reason: Below its least temperature an adhesive does not wet the surface, and a primer or sealant does not cure.
#   remedy: Warm the wall or take a grade for the cold; if it is on already, test the adhesion and replace what lets go.
#   source: the product's data in this workbook, and the reading of the day
#   basis: source-read
#   example: "P-2 (from 5 °C) put on with the air at -3 °C"
package temperature.read_below

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.odds
import data.lib.thermometer

findings contains found if {
	some line in facts.live_lines
	reading := thermometer.highest(line)
	not _is_outside(line, reading)
	some limit in thermometer.limits(line)
	reading.c < limit.figure.min - data.temperature.reading.tolerance_k
	like := degrees.of_figure(limit.figure)
	message := naming.say("%s goes on from %s; the row has the %s at %s%s", [
		naming.plain(limit.item),
		degrees.write(limit.figure.min, like),
		reading.what,
		_most(reading),
		degrees.write(reading.c, like),
	])
	cells := array.concat([limit.item.at.cell, "install"], [reading.figure.at.cell])
	found := finding.at_with(line, cells, message, {"related": _data(line, limit)})
}

_most(reading) := "" if reading.figure.min == reading.figure.max

_most(reading) := "no more than " if reading.figure.min < reading.figure.max

# The row is heated, and the air was read, maybe outside.
_is_outside(line, reading) if {
	reading.what == "air"
	odds.is_heated(line)
	not _is_by_hand(line)
}

# A heat gun warms an edge in hand, and no air.
_is_by_hand(line) if {
	heats := [s.text | some s in line.signals; s.id == "heated"; not s.no]
	count(heats) > 0
	every text in heats { regex.match(data.temperature.reading.by_hand, lower(text)) }
}

_data(line, limit) := [finding.related_product(product, [limit.figure.at.cell], "its data")] if {
	product := facts.product_of(limit.item)
	[limit.figure.at.sheet, limit.figure.at.row] != [line.sheet, line.row]
} else := []
