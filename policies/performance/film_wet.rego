# METADATA
# title: Wet film too thin for the film that is asked for
# description: |
#   What dries of a wet film is its share of solids: 40 mil wet at 50 % solids leave 20 mil. The row tells the wet film,
#   or how far a volume goes (1 gal over 100 sf is 16 mil wet), the data of the product asks for a dry one, and what is
#   left falls short of it, or the data asks for a wet film and the row tells a thinner one. Where the data tells no
#   solids, all of the film is taken to stay. A row that tells both films, and more of the dry one than the solids
#   leave, is asked about. The figure may be that of each of several coats, and is taken so. It does
#   not apply where their number is open, nor where wet and dry are not told apart in words, nor where the dry film was
#   read.
# custom:
#   id: performance-film-wet
#   topic: performance
#   severity: error
#   reason: The film that is left when it has dried is below its tested thickness and has pinholes.
#   remedy: Put on another coat, until the wet film times the solids gives the dry film that the data asks for.
#   source: the product's data in this workbook; a wet film times its solids by volume is the dry one; 1 L/m² is 1 mm
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
	wet := _wet(line)
	some item in facts.main_items(line)
	product := facts.product_of(item)
	asked := product.figures.thickness_mm
	measure.is_sound(asked)
	thick.is_asked_dry(product, asked)
	coats := thick.most_coats(line)
	dry := (measure.high(wet) * coats) * _solids(product)
	thick.under(dry, measure.low(asked))
	message := naming.say("%s at %s dries to %s%s; its data asks for %s dry", [
		naming.plain(item),
		_told(wet, asked, coats),
		measure.written(dry, "length", asked),
		_share(product),
		measure.written(measure.low(asked), "length", asked),
	])
	found := finding.at_with(line, ["material", "tag", "thickness", object.get(wet.at, "cell", "")], message, {
		"related": [finding.related_product(product, ["thickness"], "its data")],
	})
}

# The data asks for the wet film itself.
findings contains found if {
	some line in facts.live_lines
	wet := _wet(line)
	some item in facts.main_items(line)
	product := facts.product_of(item)
	asked := product.figures.thickness_mm
	measure.is_sound(asked)
	thick.is_asked_wet(product, asked)
	coats := thick.most_coats(line)
	thick.under(measure.high(wet) * coats, measure.low(asked))
	message := naming.say("%s is put on at %s; its data asks for %s wet", [
		naming.plain(item),
		_told(wet, asked, coats),
		measure.written(measure.low(asked), "length", asked),
	])
	found := finding.at_with(line, ["material", "tag", "thickness", object.get(wet.at, "cell", "")], message, {
		"related": [finding.related_product(product, ["thickness"], "its data")],
	})
}

# The row tells the wet film and the dry one, and the solids do not leave that much.
findings contains found if {
	some line in facts.live_lines
	figure := line.figures.thickness_mm
	pair := _pair(line, figure)
	some item in facts.main_items(line)
	product := facts.product_of(item)
	measure.is_sound(product.figures.solids)
	share := measure.high(product.figures.solids)
	pair.dry > (pair.wet * share) * (1 + data.performance.thickness.film.pair_share)
	message := naming.say("%s at %v wet dries to %v by its %s solids, and the row says %v dry", [
		naming.plain(item),
		pair.wet,
		round((pair.wet * share) * 10) / 10,
		product.figures.solids.text,
		pair.dry,
	])
	found := finding.at_with(line, ["material", "tag", "thickness"], message, {
		"severity": "warning",
		"related": [finding.related_product(product, ["solids"], "its data")],
	})
}

_pair(line, figure) := {"wet": to_number(two[1]), "dry": to_number(two[2])} if {
	regex.match(data.performance.thickness.film.pair_heading, lower(_heading(line, line.cells.thickness)))
	two := regex.find_all_string_submatch_n(data.performance.thickness.film.pair, lower(figure.text), 1)[0]
} else := {"wet": to_number(two[1]), "dry": to_number(two[2])} if {
	two := regex.find_all_string_submatch_n(data.performance.thickness.film.pair_words, lower(figure.text), 1)[0]
}

_heading(line, cell) := [column.heading |
	some table in input.reading.tables
	table.id == line.table
	some column in table.columns
	column.letter == regex.find_n(`^[A-Z]+`, cell, 1)[0]
][0]

# The wet film that a column tells, else that of the row's words.
_wet(line) := figure if {
	_is_wet(line)
	figure := line.figures.thickness_mm
} else := figure if {
	figure := line.figures.wet_mm
	measure.is_sound(figure)
	not line.figures.film_mm
}

_is_wet(line) if {
	measure.is_sound(line.figures.thickness_mm)
	thick.film(line, line.figures.thickness_mm) == "wet"
}

# "1 gal covers 100 sf" is written with its film, in the unit of the data.
_told(wet, asked, coats) := sprintf("%s (%s wet)%s", [
	wet.text,
	measure.written(measure.high(wet), "length", asked),
	_times(coats),
]) if {
	regex.match(data.performance.thickness.film.spread, lower(wet.text))
} else := sprintf("%s wet%s", [measure.written(measure.high(wet), "length", wet), _times(coats)])

_times(coats) := sprintf(" in each of %d coats", [coats]) if {
	coats > 1
} else := ""

_solids(product) := measure.high(product.figures.solids) if {
	measure.is_sound(product.figures.solids)
} else := 1

_share(product) := sprintf(" (%s solids)", [product.figures.solids.text]) if {
	measure.is_sound(product.figures.solids)
} else := " at most"
