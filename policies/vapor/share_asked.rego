# METADATA
# title: Less insulation outside than the notes ask
# description: |
#   The notes ask for a share of the insulation outside of the tight sheet, so that the sheet stays above the dew point
#   of the room, and a wall has less: often since a row tells of batts that were put into the studs later. Then room
#   moisture condenses on the inner face of the sheet, and the sheathing is wet for a winter. A row that tells both
#   figures itself is held to the note as it stands. It does not apply to open sheets of a build-up, to walls that the
#   note does not name where it names some, nor where a resistance is not known; a share that is short by a few percent
#   passes, as figures of makers differ by as much.
# custom:
#   id: vapor-share-asked
#   topic: vapor
#   severity: error
#   reason: With more of the insulation inside, the sheet gets colder than the dew point of the room.
#   remedy: Take the insulation out of the studs, put more outside, or have the section computed for this room.
#   source: the project's notes; the principle is that of ISO 13788 and of the code's tables
#   basis: source-read
#   example: "Notes: half of the R outboard of the membrane; row: studs filled with R-20 batts, R-8 outside"
#   looks: across rows
package vapor.share_asked

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.ratio
import data.lib.section
import data.lib.vaporclass
import data.lib.wall_type
import data.lib.words

# A row says that there is insulation in the studs here, which the build-up of its wall has not.
findings contains finding.at_with(line, ["material", "tag", filled.at.cell], message, extra) if {
	some ask in _asks
	some line in facts.live_lines
	sheet := facts.main_items(line)[0]
	vaporclass.is_tight(sheet)
	filled := _filled(line)[0]
	wall := _wall(line, ask)
	message := _message(sheet.text, filled.text, filled.r, _outside(wall, _place(wall, sheet)), ask)
	extra := {"related": [
		finding.related_address(ask.at, words.quoted(ask.text)),
		finding.related(facts.lines_by_id[wall.lines[0]], ["layers"], "the build-up of the wall"),
	]}
}

# The build-up itself has it.
findings contains finding.at_with(facts.lines_by_id[one.lines[0]], [layer.at.cell], message, extra) if {
	some ask in _asks
	some one in section.walls
	count(one.lines) == 1
	not one.lines[0] in section.judged_lines
	_is_meant(ask, _names_of(facts.lines_by_id[one.lines[0]]))
	some place, layer in one.layers
	layer.barrier
	inside := [other | some i, other in one.layers; i < place; other.insulates]
	count(inside) > 0
	every other in inside { is_number(other.r) }
	r := sum([other.r | some other in inside])
	message := _message(layer.text, inside[0].text, r, _outside(one, place), ask)
	extra := {"related": [finding.related_address(ask.at, words.quoted(ask.text))]}
}

# The row tells both figures itself: "R-6 outboard, R-19 batts in studs".
findings contains finding.at_with(line, ["material", "tag", told.slot], message, extra) if {
	some ask in _asks
	some line in facts.live_lines
	told := _told(line)[0]
	share := told.outside / (told.outside + told.inside)
	share < ask.share - data.vapor.share.short
	_is_meant(ask, _tokens(line.group))
	message := sprintf(
		"this row has %d %% of the insulation outside (%s); the notes ask for %d %%",
		[round(100 * share), words.quoted(told.text), round(100 * ask.share)],
	)
	extra := {"related": [finding.related_address(ask.at, words.quoted(ask.text))]}
}

# The row is of the insulation over a tight sheet, and tells of what lies in the studs.
findings contains finding.at_with(line, ["material", "tag", filled.at.cell], message, extra) if {
	some ask in _asks
	some line in facts.live_lines
	board := facts.main_items(line)[0]
	board.class == "insulation"
	_is_meant(ask, _tokens(line.group))
	sheet := [bed | some bed in facts.items_in(line, ["substrate"]); vaporclass.is_tight(bed)][0]
	filled := _filled(line)[0]
	filled.id != board.id
	message := _message(sheet.text, filled.text, filled.r, _r_of_board(line, board), ask)
	extra := {"related": [
		finding.related_address(ask.at, words.quoted(ask.text)),
		finding.related_product(facts.product_of(board), ["material"], "its resistance"),
	]}
}

# By the thickness of the row, and what the data tells of one millimeter or inch.
_r_of_board(line, board) := mm * rates[0] if {
	figure := [line.figures[key] | some key in ["thickness_mm", "board_mm"]; line.figures[key]][0]
	measure.is_sound(figure)
	mm := measure.low(figure)
	rates := [each |
		some text in _product_texts(board)
		some rate in data.vapor.share.rates
		found := regex.find_all_string_submatch_n(rate.like, lower(text), 1)
		each := to_number(found[0][1]) * rate.per_mm
	]
}

_told(line) := [{"slot": slot, "text": text, "outside": outer[1], "inside": inner[1]} |
	some slot in data.vapor.share.told_slots
	text := line.texts[slot]
	outer := _resistance(text, data.vapor.share.told_outside)
	inner := _resistance(text, data.vapor.share.told_inside)
	outer[0] == inner[0]
]

_resistance(text, likes) := all[0] if {
	all := [[found[0][1], to_number(found[0][2])] |
		some like in likes
		found := regex.find_all_string_submatch_n(like, lower(text), 1)
		count(found) > 0
	]
}

_message(sheet, inner, inside, outside, ask) := sprintf(
	"%s has %d %% of the insulation outside of it, with %s inside; the notes ask for %d %%",
	[sheet, round(100 * share), inner, round(100 * ask.share)],
) if {
	share := outside / (outside + inside)
	share < ask.share - data.vapor.share.short
}

# The notes that ask for a share: {"share", "text", "at"}.
_asks := [{"share": share, "text": note.text, "at": note.at} |
	some note in input.project.notes
	text := lower(note.text)
	some likes in data.vapor.share.asks
	every like in likes { regex.match(like, text) }
	not regex.match(data.vapor.share["not"], text)
	share := _share(text)
]

_share(text) := parts[0] if {
	parts := [part.share | some part in data.vapor.share.parts; regex.match(part.like, text)]
	count(parts) == 1
} else := to_number(found[0][1]) / 100 if {
	bare := regex.replace(text, data.vapor.share.humid, "")
	found := regex.find_all_string_submatch_n(data.vapor.share.percent, bare, -1)
	count(found) == 1
}

# Insulation that the row's own words put between the studs: the item with "r".
_filled(line) := [object.union(item, {"r": r}) |
	some item in facts.items_in(line, data.vapor.share.slots)
	item.class == "insulation"
	regex.match(data.vapor.share.in_studs, lower(item.clause))
	r := _r(item)
]

_r(item) := stated[0] if {
	stated := [r | some text in array.concat([item.clause], _product_texts(item)); r := ratio.stated(lower(text))]
}

_product_texts(item) := [text | some text in facts.product_of(item).texts]

default _product_texts(_) := []

# The one build-up of the row's wall, where the note means it; told of one wall only.
_wall(line, ask) := walls[0] if {
	names := _tokens(line.group)
	_is_meant(ask, names)
	walls := [one |
		some one in section.walls
		count(one.lines) == 1
		one.lines[0] != line.id
		count(_names_of(facts.lines_by_id[one.lines[0]]) & names) > 0
	]
	count(walls) == 1
}

# A note that names walls means those only.
_is_meant(ask, _) if count(_tokens(ask.text) & _wall_names) == 0

_is_meant(ask, names) if count(_tokens(ask.text) & names) > 0

_wall_names := {name | some one in section.walls; some id in one.lines; some name in _names_of(facts.lines_by_id[id])}

_names_of(line) := {lower(name) | some name in wall_type.names(line)}

_tokens(text) := {name | some name in regex.split(`[\s,;:/&+()]+`, lower(text)); name != ""}

# Where the sheet lies in the build-up: the innermost of its kind.
_place(wall, sheet) := min([i | some i, layer in wall.layers; layer.family == sheet.family])

_outside(wall, place) := ratio.outside(wall.layers, place) if {
	some i, layer in wall.layers
	i > place
	layer.insulates
}
