# METADATA
# title: Film inside a wall that is to have none
# description: |
#   A note, or the wall's own build-up, says that this wall type has no vapor film or retarder on its room side, or
#   names what is kept out of it (polyethylene, foil, vinyl wall covering), and the row puts one there. Whoever wrote
#   the note has a tight sheet outside, or a wall that dries inward: with the film what gets in between stays. It does
#   not apply to notes with a condition, to films that the row leaves out or takes off, nor to walls that the sentence
#   does not name; where the two tight layers are found themselves, that is told alone.
# custom:
#   id: vapor-film-barred
#   topic: vapor
#   severity: error
#   reason: Two tight layers in a wall hold the water between them, and the job itself keeps the film out.
#   remedy: Leave the film out, or have the wall computed anew with it and the note changed.
#   source: the workbook's own notes and wall types
#   basis: source-read
#   example: "row: 6 mil poly, room side of studs, wall W4; note: W3 and W4 get no vapor retarder inside"
package vapor.film_barred

import data.lib.facts
import data.lib.finding
import data.lib.wall_type
import data.lib.words
import data.vapor.two_barriers

findings contains found if {
	some line in facts.live_lines
	film := _film(line)
	told := _told(line, film.family)[0]
	not line.id in _told_as_two # one mistake, one finding
	message := sprintf("%s goes on the room side of %s, but that wall is to have none: %s", [
		film.text,
		line.group,
		words.quoted(told.text),
	])
	related := [finding.related_address(told.at, "the note")]
	found := finding.at_with(line, ["material", film.at.cell], message, {"related": related})
}

_told_as_two := {found.line | some found in two_barriers.findings}

_film(line) := items[0] if {
	items := facts.main_items(line)
	items[0].family in data.vapor.inboard.barred_families
	facts.is_there(items[0])
	some slot in ["type", "material", "tag", "place", "substrate"]
	text := lower(line.texts[slot])
	regex.match(data.vapor.inboard.film_inside, text)
	not regex.match(data.vapor.inboard.film_gone, text)
}

_told(line, family) := array.concat(
	[{"text": clause, "at": note.at} |
		some note in input.project.notes
		some clause in _bars(note.text, family)
		some name in _groups(line)
		_names(clause, note.text, name)
	],
	[{"text": clause, "at": {"sheet": wall.sheet, "row": wall.row, "cell": wall.cells[slot]}} |
		some wall in wall_type.of(line)
		some slot, text in wall.texts
		some clause in _bars(text, family)
	],
)

# _groups lists what the row calls its wall, which may stand beside the place: "Tower E / EW3".
_groups(line) := {lower(line.group)} | {lower(code) | some code in wall_type.codes_of_group(line)}

# _bars lists the sentences that keep a film of this family out, without a condition.
_bars(text, family) := [trim_space(clause) |
	some clause in regex.split(`;|\.(?:\s|$)|\n`, regex.replace(text, data.vapor.inboard.abbreviated, "$1 "))
	_is_bar(lower(clause), family)
	not regex.match(data.vapor.inboard.condition, lower(clause))
]

_is_bar(text, family) if {
	family in data.vapor.barriers.film_families
	regex.match(data.vapor.inboard.film_barred, text)
}

# "No foil and no poly on any EW2 wall": what is kept out of a wall by its own name.
_is_bar(text, family) if {
	some kind in data.vapor.inboard.named_barred
	family in kind.families
	regex.match(kind.words, text)
	regex.match(data.vapor.inboard.of_walls, text)
}

_names(clause, _, group) if group in _codes(clause)

# "W4 brick, wool, sheet, block. No retarder inside": the note is of the wall that it starts with.
_names(clause, text, group) if {
	count(_codes(clause)) == 0
	codes := regex.split(`[^\pL\d.-]+`, lower(trim_space(text)))
	codes[0] == group
	regex.match(data.data.walls.code, group)
}

_codes(text) := {word |
	some word in regex.split(`[^\pL\d-]+`, lower(text))
	regex.match(data.data.walls.code, word)
}
