# METADATA
# title: Wet film too thin for the dry film that is asked for
# description: |
#   What dries of a wet film is its share of solids: 40 mil wet at 50 % solids leave 20 mil. The row tells the wet film,
#   the data of the product asks for a dry one, and what is left falls short of it. Where the data tells no solids, all
#   of the film is taken to stay. It does not apply where the row tells of several coats, since the figure may be that
#   of each, nor where wet and dry are not told apart in words.
# custom:
#   id: performance-film-wet
#   topic: performance
#   severity: error
#   reason: The film that is left when it has dried is below its tested thickness and has pinholes.
#   remedy: Put on another coat, until the wet film times the solids gives the dry film that the data asks for.
#   source: the product's data in this workbook; a wet film times its solids by volume is the dry one
#   basis: common-practice
#   example: "LM-1, 40 mil wet; its data says 30 mil dry, 50 % solids by volume"
package performance.film_wet

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.thick

findings contains found if {
	some line in facts.live_lines
	wet := line.figures.thickness_mm
	measure.is_sound(wet)
	thick.film(line, wet) == "wet"
	not _is_in_coats(line)
	some item in facts.main_items(line)
	product := facts.product_of(item)
	asked := product.figures.thickness_mm
	measure.is_sound(asked)
	thick.film(product, asked) == "dry"
	dry := measure.high(wet) * _solids(product)
	thick.under(dry, measure.low(asked))
	message := naming.say("%s at %s wet dries to %s%s; its data asks for %s dry", [
		naming.plain(item),
		measure.written(measure.high(wet), "length", wet),
		measure.written(dry, "length", wet),
		_share(product),
		measure.written(measure.low(asked), "length", asked),
	])
	found := finding.at_with(line, ["material", "tag", "thickness"], message, {
		"related": [finding.related_product(product, ["thickness"], "its data")],
	})
}

_is_in_coats(line) if {
	some text in line.texts
	regex.match(data.performance.thickness.film.coats, lower(text))
}

_solids(product) := measure.high(product.figures.solids) if {
	measure.is_sound(product.figures.solids)
} else := 1

_share(product) := sprintf(" (%s solids)", [product.figures.solids.text]) if {
	measure.is_sound(product.figures.solids)
} else := " at most"
