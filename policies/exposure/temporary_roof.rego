# METADATA
# title: Base ply as a temporary roof
# description: |
#   The row says that a base sheet or underlayment serves as a temporary roof, and it lies bare for longer than such a
#   ply usually may: it has no mineral surface, trades walk and drop things on it, and dust and dew keep the next ply
#   from sticking. No figure is given for it, so it is a question to the maker. It does not apply where the data states
#   days, which are held instead, nor to a cap sheet or a finished roof.
# custom:
#   id: exposure-temporary-roof
#   topic: exposure
#   severity: warning
#   reason: A base ply is no finish; sun, dust and traffic spoil it, and the next ply does not stick.
#   remedy: Ask the maker for the days and for the repair before the next ply, or lay the cap at once.
#   source: common practice for base plies left as a temporary roof (about a month)
#   basis: from-memory
#   example: "Base sheet down 4 Aug as a temporary roof, cap 2 Nov"
package exposure.temporary_roof

import data.lib.bare
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	span := line.spans.bare_days
	item := facts.main_items(line)[0]
	item.class in data.exposure.temporary_roof.classes
	told := _told(line)
	row := {"line": line, "span": span, "item": item}
	not bare.own(row)
	level := bare.level(row, data.exposure.temporary_roof.days)
	message := naming.say("%s serves as a temporary roof (%s) and %s; a base ply usually may about %s", [
		naming.plain(item),
		words.quoted(told.text),
		bare.stays(row),
		words.days(data.exposure.temporary_roof.days),
	])
	found := finding.at_with(line, ["material", "tag", "install", "cover", told.slot], message, {
		"severity": bare.softer(level),
		"related": bare.related(line),
	})
}

_told(line) := [{"text": found[0], "slot": slot} |
	some slot in ["remark", "material", "place", "type", "cover"]
	text := object.get(line.texts, slot, "")
	found := regex.find_n(data.exposure.temporary_roof.words, text, 1)
	count(found) > 0
	not regex.match(data.exposure.temporary_roof.unless, text)
][0]
