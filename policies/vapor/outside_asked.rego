# METADATA
# title: Less insulation outside than the notes ask of that wall
# description: |
#   The notes ask of a wall type for a least resistance of the continuous insulation outside, and a row of its
#   insulation states less. The sheathing behind it is then colder than the wall was planned for, and where batts fill
#   the studs the moisture of the rooms condenses on it in the first cold winter. It does not apply to insulation
#   between the studs, to rows that state no resistance or several, nor to one of several layers at the same place.
# custom:
#   id: vapor-outside-asked
#   topic: vapor
#   severity: error
#   reason: With less insulation outside the sheathing gets colder than the wall was planned for, and is wet in winter.
#   remedy: Use the thickness that the notes ask for there, or have the wall computed anew and the note changed.
#   source: the project's notes
#   basis: source-read
#   looks: across rows
#   example: "note: EW-2 (batts, painted board inside) R-10 or more outboard; row: wool on EW-2, R-6.3"
package vapor.outside_asked

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at_with(line, ["material", "tag", own.slot], message, {"related": related}) if {
	some ask in _asks
	some line in facts.live_lines
	lower(line.group) in ask.walls
	item := facts.main_items(line)[0]
	item.class == "insulation"
	not _is_one_of_several(line)
	own := _own(line)
	own.r < ask.r * data.vapor.ratio.short_share
	message := naming.say("%s has R-%s; the notes ask for R-%s outside in %s", [
		naming.plain(item),
		words.number(own.r),
		words.number(ask.r),
		line.group,
	])
	related := [finding.related_address(ask.at, words.quoted(ask.text))]
}

# The notes that ask for one least resistance outside, with the walls that they name.
_asks := [{"walls": walls, "r": to_number(bounds[0]), "text": note.text, "at": note.at} |
	some note in input.project.notes
	text := lower(note.text)
	regex.match(data.vapor.share.asked_outside, text)
	bounds := [part |
		some found in regex.find_all_string_submatch_n(data.vapor.share.asked_r, text, -1)
		some part in array.slice(found, 1, 3)
		part != ""
	]
	count(bounds) == 1
	walls := {code | some code in regex.find_n(data.vapor.share.wall_code, text, -1)}
]

# The one resistance that the row states of its own insulation, and not of batts or by the inch.
_own(line) := told[0] if {
	told := [{"slot": slot, "r": to_number(found[1])} |
		some slot, text in line.texts
		slot in data.vapor.share.own_slots
		not regex.match(data.vapor.share.in_studs, lower(text))
		some found in regex.find_all_string_submatch_n(data.vapor.share.r, lower(text), -1)
		found[2] == ""
	]
	count({one.r | some one in told}) == 1
}

_is_one_of_several(line) if {
	some other in facts.live_lines
	other.id != line.id
	other.group == line.group
	other.place == line.place
	facts.main_items(other)[0].class == "insulation"
}
