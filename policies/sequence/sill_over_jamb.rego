# METADATA
# title: Sill strip over the jamb strips
# description: |
#   The row of a sill says that its strip goes over the strips of the jambs. Water that runs down a jamb strip then
#   comes behind the sill strip, and the corner of the rough sill is the first to rot. It applies to the row of a sill
#   alone. It does not apply to a head, which goes over the jambs, nor to one piece for all the sides of an opening.
# custom:
#   id: sequence-sill-over-jamb
#   topic: sequence
#   severity: error
#   reason: Water runs down the jamb strip and in behind the upper edge of the sill strip.
#   remedy: Put the sill strip on first, and lap the jamb strips over it; take off what was lapped the other way.
#   source: "common practice: sill, jambs, head"
#   basis: common-practice
#   example: "window sills: strip laid last, on top of the jamb strips"
package sequence.sill_over_jamb

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains found if {
	some line in sheet.lines
	_is_sill(line.place)
	told := _told(line)
	count(told) > 0
	item := facts.main_items(line)[0]
	message := naming.say("%s at a sill is lapped over the strips of the jambs (\"%s\")", [
		naming.plain(item),
		told[0].text,
	])
	found := finding.at(line, array.concat(["material", "tag"], [t.slot | some t in told]), message)
}

_is_sill(place) if {
	regex.match(_data.sill, place)
	not regex.match(_data.not_sill, place)
}

_told(line) := [{"slot": slot, "text": text} |
	some slot in _data.slots
	text := line.texts[slot]
	regex.match(_data.over_jamb, text)
	not regex.match(_data.denied, text)
]

_data := data.sequence.openings
