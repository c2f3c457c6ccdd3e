# METADATA
# title: Acid-cure sealant where the notes bar it
# description: |
#   The notes bar what gives off acetic acid, as conservators do in rooms with collections, and a row uses an acetoxy
#   silicone there. It smells of vinegar for a week and goes on giving off acid for months: lead, bronze, shells, paper
#   and limestone in the room tarnish or bloom. It does not apply without such a note, to neutral-cure silicones, nor to
#   rows that lie in no room of the kind that the note is told for.
# custom:
#   id: performance-acid-cure
#   topic: performance
#   severity: error
#   reason: Acetic acid from the sealant attacks what is kept in the room, for months after it has cured.
#   remedy: Take a neutral-cure silicone that the conservator has passed.
#   source: the project's notes
#   basis: source-read
#   example: "Notes: nothing that gives off acetic acid in the archive; row: acetoxy silicone, archive windows inside"
package performance.acid_cure

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	some item in facts.main_items(line)
	facts.has_key(item, data.performance.acid.traits)
	barred := [limit | some limit in _bans; _holds(limit, line)]
	count(barred) > 0
	message := naming.say("%s gives off acetic acid, which the notes bar there", [naming.plain(item)])
	found := finding.at_with(line, [item.at.cell], message, {"related": [
		finding.related_address(barred[0].at, words.quoted(barred[0].text)),
	]})
}

_bans := [limit | some limit in input.project.limits; limit.kind == "no_acid_cure"]

# A note for rooms of a kind holds for the rows that name such a room.
_holds(limit, _) if not _is_narrowed(limit.text)

_holds(limit, line) if {
	_is_narrowed(limit.text)
	some slot in data.performance.acid.slots
	_is_narrowed(object.get(line.texts, slot, ""))
}

_holds(limit, line) if {
	_is_narrowed(limit.text)
	_is_narrowed(object.get(line, "group", ""))
}

_is_narrowed(text) if regex.match(data.performance.acid.narrowed, lower(text))
