# METADATA
# title: Less insulation outside than the notes ask of that wall
# description: |
#   The notes ask of a wall type for a least resistance of the continuous insulation outside, or the list of walls has
#   its resistance, and a row of that wall states less. The sheathing behind it is then colder than the wall was planned
#   for, and where batts fill the studs the moisture of the rooms condenses on it in the first cold winter. What the
#   list alone has is asked about. It does not apply to insulation between the studs, to rows that state no resistance
#   or several, nor to one of several layers at the same place.
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
import data.lib.measure
import data.lib.naming
import data.lib.ratio
import data.lib.wall_type
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

# A column of the schedule tells the resistance outside, whatever material the row is of.
findings contains finding.at_with(line, [figure.at.cell], message, extra) if {
	some line in facts.live_lines
	figure := line.figures.outside_r_m2kw
	measure.is_sound(figure)
	least := _least(lower(trim_space(line.group)))
	measure.high(figure) < least.r * data.vapor.ratio.short_share
	in_si := regex.match(data.vapor.share.si, lower(measure.unit_words(figure)))
	message := naming.say("the row has %s outside; %s %s", [
		ratio.written(measure.high(figure), in_si),
		least.says,
		ratio.written(least.r, in_si),
	])
	extra := {"severity": least.severity, "related": [finding.related_address(least.at, words.quoted(least.text))]}
}

# What the notes ask of a wall in m²·K/W, else what the one list of walls that has it tells: {"r", "says", "severity",
# "text", "at"}.
_least(name) := asked[0] if {
	asked := [{
		"r": ask.r / data.vapor.ratio.r_si,
		"says": "the notes ask for",
		"severity": "error",
		"text": ask.text,
		"at": ask.at,
	} |
		some ask in _asks
		name in ask.walls
	]
	count(asked) > 0
} else := object.union(_listed[name][0], {"says": "the list of walls has", "severity": "warning"}) if {
	count({one.r | some one in _listed[name]}) == 1
}

_listed := {name: walls |
	some name in {one.name | some one in _walls}
	walls := [one | some one in _walls; one.name == name]
}

_walls := array.concat(_noted_walls, _section_walls)

# A wall of a line of the notes: "EW-2: siding, wool R-12, sheet, sheathing, studs with R-20 batts".
_noted_walls := [{"name": found[0][1], "r": rs[0], "text": note.text, "at": note.at} |
	some note in input.project.notes
	found := regex.find_all_string_submatch_n(data.vapor.share.listed, lower(note.text), 1)
	rs := [r |
		some part in regex.split(data.vapor.share.layer_signs, found[0][2])
		not regex.match(data.vapor.barriers.cavity_words, part)
		r := ratio.stated(part)
	]
	count(rs) == 1
]

# A wall of a table of build-ups, by the one insulation that it has outside of the studs.
_section_walls := [{"name": lower(name), "r": boards[0].r_m2kw, "text": boards[0].clause, "at": boards[0].at} |
	some line in facts.live_lines
	not line.cells.install
	boards := [item |
		some item in facts.items_in(line, ["layers"])
		item.class == "insulation"
		not regex.match(data.vapor.barriers.cavity_words, lower(item.clause))
	]
	count(boards) == 1
	is_number(boards[0].r_m2kw)
	some name in wall_type.names(line)
]

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
