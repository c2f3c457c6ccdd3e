# METADATA
# title: Less wait than the product's data asks for
# description: |
#   A second coat on a first that is still wet shuts in its water or solvent: it blisters and stays soft. Backfill
#   against a fresh coat scrapes it off. Told where the product's data gives hours, and the row's words or dates give
#   fewer. It does not apply where the row tells no hours or days, nor to a product whose data gives none. Days are
#   counted so that the work may be of the first hour and the backfill of the last. So are those of a deck for which
#   the notes ask for so many hours of flood test.
# custom:
#   id: sequence-waits-cut
#   topic: sequence
#   severity: warning
#   reason: A coat that is covered before it has cured stays soft, blisters, or comes off with what covers it.
#   remedy: Wait for the hours of the data, or ask its maker for a faster grade.
#   source: the product's data
#   basis: common-practice
#   example: "Second coat 2 h after the first; its data asks for 16 h between coats"
package sequence.waits_cut

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.sheet

findings contains found if {
	some line in sheet.lines
	told := line.figures.recoat_h
	measure.is_sound(told)
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	asked := product.figures.recoat_h
	measure.is_sound(asked)
	measure.high(told) < measure.low(asked)
	message := naming.say("The second coat of %s follows after %s; its data asks for %s", [
		item.text,
		told.text,
		asked.text,
	])
	found := finding.at_with(line, ["material", "tag", told.at.cell], message, {"related": _data(product, asked)})
}

findings contains found if {
	some line in sheet.lines
	_is_backfilled(line)
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	asked := product.figures.backfill_wait_h
	measure.is_sound(asked)
	days := line.spans.bare_days.max
	days >= 0
	(days * 24) + data.sequence.waits.day_h < measure.low(asked)
	message := naming.say("%s is backfilled %s; its data asks for %s first", [
		naming.plain(item),
		_after(days),
		asked.text,
	])
	found := finding.at_with(line, ["material", "tag", "cover"], message, {"related": _data(product, asked)})
}

# The notes have decks stand under water for so many hours before they are covered.
findings contains found if {
	some line in sheet.lines
	days := line.spans.bare_days.max
	days >= 0
	_is_level(line)
	asked := _floods[0]
	(days * 24) + data.sequence.waits.day_h < asked.hours
	message := naming.say("%s is covered %s, and the notes ask for %v hours of flood test first", [
		naming.plain(facts.main_items(line)[0]),
		_after(days),
		asked.hours,
	])
	found := finding.at_with(line, ["material", "tag", "cover"], message, {"related": [finding.related_address(
		asked.note.at,
		asked.note.text,
	)]})
}

_floods := [{"hours": to_number(told[1]), "note": note} |
	some note in input.project.notes
	some told in regex.find_all_string_submatch_n(data.sequence.waits.flood, note.text, 1)
	not regex.match(data.sequence.waits.flood_not, note.text)
]

_is_level(line) if {
	at := lower(concat(" ", [line.place, line.group]))
	regex.match(data.sequence.waits.flood_at, lower(at))
	not regex.match(data.sequence.waits.flood_at_not, at)
	not regex.match(data.sequence.waits.flood_told_not, lower(object.get(line.texts, "remark", "")))
}

_is_backfilled(line) if {
	some text in line.texts
	some sentence in regex.split(`[.;]`, lower(text))
	regex.match(data.sequence.waits.backfilled, sentence)
	not regex.match(data.sequence.waits.backfilled_not, sentence)
}

_after(0) := "on the day it goes on"

_after(days) := sprintf("within %d days", [days]) if days > 1

_after(1) := "on the next day"

_data(product, figure) := [finding.related_address(object.union(figure.at, {"sheet": product.sheet}), figure.text)]
