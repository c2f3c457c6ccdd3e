# METADATA
# title: Film thinner than its data asks for
# description: |
#   The dry film that was read on the wall is thinner than the product's data asks for. Pinholes over the pores of
#   block and at joints stay open, and the tested figures for air and water do not hold. It does not apply to a
#   reading of the wet film, nor where the data tells no thickness or that of the wet film alone.
# custom:
#   id: performance-film-thin
#   topic: performance
#   severity: error
#   reason: A film below its tested thickness has pinholes, and neither air nor water figures hold for it.
#   remedy: Put on another coat to the full dry thickness, and read it again at the thin places.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "DFT 18 mil read; the data of LM-1 says 30 mil dry min."
package performance.film_thin

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.thick

findings contains found if {
	some line in facts.live_lines
	film := line.figures.film_mm
	measure.is_sound(film)
	some item in array.concat(facts.main_items(line), facts.items_in(line, ["with"]))
	product := facts.product_of(item)
	thick.is_film(product)
	asked := product.figures.thickness_mm
	measure.is_sound(asked)
	not _is_wet(product, asked)
	thick.under(measure.low(film), measure.low(asked))
	message := naming.say("the dry film of %s was read at %s; its data asks for %s", [
		naming.plain(item),
		measure.as_said("length", film),
		measure.as_said("length", asked),
	])
	found := finding.at_with(line, ["material", "tag", film.at.cell], message, {
		"related": [finding.related_product(product, ["thickness"], "its data")],
	})
}

_is_wet(product, figure) if thick.film(product, figure) == "wet"
