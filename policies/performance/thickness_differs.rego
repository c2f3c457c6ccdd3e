# METADATA
# title: Row and product data tell two thicknesses
# description: |
#   The row says one thickness and the data of its product another. Either the wrong product is named or the row
#   was copied from an older one; what arrives on site is the product, and two years later the torn corners are
#   those of the thinner sheet. It does not apply to boards and insulation, which come in several thicknesses, nor
#   to figures within rounding of the other unit.
# custom:
#   id: performance-thickness-differs
#   topic: performance
#   severity: warning
#   reason: The product named is not made in the thickness that the row asks for, as far as its data tells.
#   remedy: Find out which of the two is meant, and correct the other.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "row: FM-1, 45 mil; its data: 40 mil"
package performance.thickness_differs

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.thick

findings contains found if {
	some line in facts.live_lines
	thickness := thick.of(line)
	thickness.own
	product := facts.product_of(thickness.item)
	not product.repeats
	figure := product.figures.thickness_mm
	measure.is_sound(figure)
	thick.differ(thickness.mm, measure.low(figure))
	not _is_one_coat(line, thickness.figure)
	not _is_other_film(line, thickness.figure, product)
	not _is_within(thickness.mm, figure)
	not _is_film_over(thickness.mm, figure, thickness.item)
	message := sprintf("%s is scheduled at %s, but its data says %s", [
		thickness.item.text,
		measure.as_said("length", thickness.figure),
		measure.as_said("length", figure),
	])
	related := [finding.related_product(product, ["thickness"], "its data")]
	found := finding.at_with(line, ["material", "thickness"], message, {"related": related})
}

# Sheet metal that is thinner than its data by more than its rolling tolerance and its coating.
findings contains found if {
	some line in facts.live_lines
	line.role in data.performance.thickness.metal.roles
	own := line.figures.thickness_mm
	measure.is_sound(own)
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	product.role in data.performance.thickness.metal.roles
	figure := product.figures.thickness_mm
	measure.is_sound(figure)
	measure.high(own) < measure.low(figure) * data.performance.thickness.metal.share
	message := sprintf("%s is scheduled at %s, but its data says %s", [
		item.text,
		measure.as_said("length", own),
		measure.as_said("length", figure),
	])
	related := [finding.related_product(product, ["thickness"], "its data")]
	found := finding.at_with(line, ["material", "thickness"], message, {"related": related})
}

# The data tells a range, or one figure for decks and another for walls.
_is_within(mm, figure) if {
	mm >= measure.low(figure)
	not mm > measure.high(figure)
}

# A film that is measured over the least that the data asks for is right, and so is more of what is poured.
_is_film_over(mm, figure, _) if {
	mm > measure.low(figure)
	regex.match(data.performance.thickness.least_words, lower(figure.text))
}

_is_film_over(mm, figure, item) if {
	mm > measure.low(figure)
	regex.match(data.performance.thickness.applied, item.family)
}

# Words that tell more than the film may tell that of one coat of several.
_is_one_coat(line, figure) if {
	figure.at.cell == line.cells.type
	regex.match(data.performance.thickness.film.coats, lower(line.texts.type))
}

# A film before it dries is held against a dry one by its solids: performance-film-wet.
_is_other_film(line, figure, product) if {
	thick.film(line, figure) == "wet"
	thick.film(product, product.figures.thickness_mm) == "dry"
}
