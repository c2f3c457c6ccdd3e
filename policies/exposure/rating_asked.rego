# METADATA
# title: Rated for fewer days than its row asks
# description: |
#   The row has a column for the days in the sun that its material must be rated for, and the product's data gives
#   fewer. The dates may fit today; a rating is asked for so that a late mason costs nothing, and after the first
#   delay the face is chalked before it is covered. It does not apply to a product without limit, nor to equal days.
# custom:
#   id: exposure-rating-asked
#   topic: exposure
#   severity: error
#   reason: The product bears fewer days in the sun than the same row asks.
#   remedy: Take a product that is rated for the days, or ask the designer whether fewer will do.
#   source: the row itself and the product's data
#   basis: source-read
#   example: "exposure rating required 120 days; data of FM-1: 60 days"
package exposure.rating_asked

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	asked := line.figures.min_exposure_days
	measure.is_sound(asked)
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	told := product.figures.exposure_days
	measure.is_sound(told)
	measure.high(told) < measure.low(asked)
	message := naming.say("%s is rated for %s in the sun, but the row asks for %s", [
		naming.plain(item),
		words.days(measure.high(told)),
		words.days(measure.low(asked)),
	])
	related := finding.related_product(product, measure.cell(told, "exposure_days"), "its data")
	found := finding.at_with(line, ["material", "tag", "min_exposure"], message, {"related": [related]})
}
