# METADATA
# title: Put on above its highest temperature, as read on the day
# description: |
#   The log gives the temperature at which the work was done, and the data of the sheet, primer or sealant allows
#   less. A grade for the cold is soft in the heat: it sags, slides off a wall and cannot be lifted from its liner.
#   It does not apply to limits stated for the shop. Of a range (the low and the high of the day) the bottom counts.
# custom:
#   id: temperature-read-above
#   topic: temperature
#   severity: error
#   reason: Above its highest temperature an adhesive is too soft to hold the sheet, and a primer dries before it wets.
#   remedy: Look for slips and blisters and replace what moved; work in the cool of the day, or take the standard grade.
#   source: the product's data in this workbook, and the reading of the day
#   basis: source-read
#   example: "FM-2 (up to 20 °C) put on with the surface at 31 °C"
package temperature.read_above

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.thermometer

findings contains found if {
	some line in facts.live_lines
	reading := thermometer.lowest(line)
	some limit in thermometer.uppers(line)
	reading.c > limit.figure.max + data.temperature.reading.tolerance_k
	like := degrees.of_figure(limit.figure)
	message := naming.say("%s goes on up to %s; the row has the %s at %s%s", [
		naming.plain(limit.item),
		degrees.write(limit.figure.max, like),
		reading.what,
		_least(reading),
		degrees.write(reading.c, like),
	])
	cells := array.concat([limit.item.at.cell, "install"], [reading.figure.at.cell])
	found := finding.at_with(line, cells, message, {"related": [finding.related_product(
		facts.product_of(limit.item),
		[limit.figure.at.cell],
		"its data",
	)]})
}

_least(reading) := "" if reading.figure.min == reading.figure.max

_least(reading) := "no less than " if reading.figure.min < reading.figure.max
