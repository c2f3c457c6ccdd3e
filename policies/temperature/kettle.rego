# METADATA
# title: Hot compound heated outside the range of its data
# description: |
#   The kettle was read hotter or cooler than the data of the hot-applied compound allows. Too hot, the polymer breaks
#   down and the film turns brittle or stays soft for good; too cool, it is laid thick and does not wet the deck. It
#   does not apply where the data gives a single figure and no end of a range, nor to figures too low for a kettle.
# custom:
#   id: temperature-kettle
#   topic: temperature
#   severity: error
#   reason: Overheated compound loses its polymer, and compound that is too cool does not wet the surface.
#   remedy: Discard what was overheated, take up what was laid of it, and keep the kettle within the range of the data.
#   source: the product's data in this workbook, and the reading of the day
#   basis: source-read
#   example: "HR-2 (kettle 175 to 205 °C), kettle read at 231 °C"
package temperature.kettle

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	reading := line.figures.reading_kettle_c
	measure.is_sound(reading)
	measure.low(reading) >= data.temperature.reading.kettle.least_c
	some item in facts.main_items(line)
	product := facts.product_of(item)
	asked := product.figures.kettle_c
	measure.is_sound(asked)
	asked.min != asked.max
	_is_outside(reading, asked)
	message := naming.say("the kettle of %s was read at %s; its data asks for %s", [
		naming.plain(item),
		measure.as_said("temperature", reading),
		measure.as_said("temperature", asked),
	])
	found := finding.at_with(line, ["material", "tag", reading.at.cell], message, {
		"related": [finding.related_product(product, [asked.at.cell], "its data")],
	})
}

_is_outside(reading, asked) if {
	is_number(asked.max)
	measure.high(reading) > asked.max + data.temperature.reading.kettle.tolerance_k
}

_is_outside(reading, asked) if {
	is_number(asked.min)
	measure.low(reading) < asked.min - data.temperature.reading.kettle.tolerance_k
}
