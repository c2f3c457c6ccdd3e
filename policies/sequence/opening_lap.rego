# METADATA
# title: A lower strip of an opening over the one above it
# description: |
#   At an opening water runs from the head over the jambs to the sill. A sill strip stuck over the face of the jamb
#   strips, or jamb strips over that of the head, stand against it: the water goes behind, and the corner of the sill
#   is soft in two years. It applies where the words before the lap name that part alone, or the row is of it alone,
#   and the strip that it laps over is named. It does not apply to a pan that turns up over the jamb framing, which is
#   right, nor where the row's words of a reversed lap are told already.
# custom:
#   id: sequence-opening-lap
#   topic: sequence
#   severity: error
#   reason: Water running down the upper strip is led behind the lower one.
#   remedy: Set the lower strip first and lap the upper one over it; take off what was lapped the wrong way.
#   source: "common practice: sill, jambs, head, each over the one below"
#   basis: common-practice
#   example: "sill strip, laps 4 in. over the jamb strips"
package sequence.opening_lap

import data.lib.closing
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	count(closing.reversed(line)) == 0
	some slot in _data.lap_slots
	some piece in regex.split(_data.lap_parting, lower(line.texts[slot]))
	some own, like in _data.laps_over
	said := regex.find_n(like, piece, 1)[0]
	before := split(piece, said)[0]
	_is_of(own, line, before)
	not _of_another(before, own)
	message := naming.say("%s at the %s laps over the piece above it (%s)", [
		naming.plain(facts.main_items(line)[0]),
		own,
		words.quoted(said),
	])
	found := finding.at(line, ["material", "tag", slot], message)
}

# The lap is of the part that is named before it, in a row that may be of several; else of the row's one part.
_is_of(own, _, before) if own in _named(before)

_is_of(own, line, before) if {
	count(_named(before)) == 0
	_named(object.get(line.texts, "place", "")) == {own}
}

# _of_another: the words before tell of another part, or deny it.
_of_another(before, own) if {
	some word in _words(before)
	some part in (object.keys(_data.parts) | {"not"})
	part != own
	word in object.get(_data.parts, part, _data.denials)
}

# _named are the parts of an opening that a text names.
_named(text) := {part |
	some word in _words(lower(text))
	some part in _parts_called[word]
}

_parts_called := {name: parts |
	some name in {one | some names in _data.parts; some one in names; count(one) > 1}
	parts := [part | some part, names in _data.parts; name in names]
}

_words(text) := regex.split(`[^a-z]+`, text)

_data := data.sequence.openings
