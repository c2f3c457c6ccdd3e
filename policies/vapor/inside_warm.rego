# METADATA
# title: Vapor barrier on the cooled side of the insulation
# description: |
#   Polyethylene inside belongs to cold climates. Where winters are mild the film only stops drying: in a humid
#   summer outdoor vapor meets it on the cooled side, and within two such summers the gypsum behind it is spotted.
#   Around a freezer or a cold store vapor drives inward all year, and a tight layer on the room side of the insulation
#   turns it to ice until the liner comes off: an error there. It does not apply to vinyl wall covering, nor to a sheet
#   that the list of walls draws outside of the insulation, nor, where winters are mild, to walls that already have a
#   tight sheet outside, which are told by other rules.
# custom:
#   id: vapor-inside-warm
#   topic: vapor
#   severity: warning
#   reason: Vapor drives inward there and condenses on the cool back of the film.
#   remedy: Leave the film out; what keeps vapor back belongs on the warm side, which is the outer one there.
#   source: IRC R702.7 bars class I inside in zones 1 to 3; cold stores from common practice
#   basis: source-read
#   example: "polyethylene behind the gypsum board in Houston"
package vapor.inside_warm

import data.lib.facts
import data.lib.finding
import data.lib.inside
import data.lib.section
import data.lib.vaporclass
import data.lib.wall_type
import data.lib.winter
import data.lib.words

findings contains finding.at(facts.lines_by_id[layer.line], ["material", "tag", layer.at.cell], message) if {
	winter.celsius >= data.vapor.climate.warm_c
	some one in section.all
	some i, layer in one.layers
	layer.family in data.vapor.barriers.inside_families
	not layer.family in data.vapor.barriers.vinyl.families
	layer.vapor == "I"
	not layer.line in section.judged_lines
	_is_outside(one, i)
	message := sprintf("%s lies on the room side of the insulation, where winters are mild (%s)", [
		layer.text,
		winter.written(winter.celsius),
	])
}

_is_outside(one, i) if {
	some layer in array.slice(one.layers, i + 1, count(one.layers))
	layer.insulates
}

# The row of an open sheet tells the film itself, behind studs that are filled: no section has it.
findings contains finding.at(line, ["material", "tag", film.cell], message) if {
	winter.celsius >= data.vapor.climate.warm_c
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not line.id in section.judged_lines
	not vaporclass.is_tight(facts.main_items(line)[0])
	film := [one | some one in inside.barriers(line); not one.vinyl][0]
	not _is_section_layer(film.cell, line)
	message := sprintf("%s lies on the room side of the insulation, where winters are mild (%s)", [
		film.text,
		winter.written(winter.celsius),
	])
}

_is_section_layer(cell, line) if {
	some one in section.all
	some layer in one.layers
	layer.line == line.id
	layer.at.cell == cell
}

# The room is kept cold, and what the row lays on its side is tight.
findings contains finding.at_with(line, ["material", "tag", side.slot], message, extra) if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	item.class in data.vapor.cold_rooms.classes
	vaporclass.of(item) == "I"
	side := _room_side(line)[0]
	room := _cold_room(line)[0]
	not _is_drawn_outside(line, item)
	message := sprintf("%s lies on the room side (%s) of %s (%s), into which vapor drives all year", [
		item.text,
		words.quoted(side.text),
		"a room that is kept cold",
		words.quoted(room.text),
	])
	related := [finding.related(room.line, [room.slot], "the room") | room.line.id != line.id]
	extra := {"severity": "error", "related": related}
}

# The list of walls has the sheet outside of the insulation: "inner face" is that of the wall behind it.
_is_drawn_outside(line, item) if {
	some wall in section.all
	wall_type.is_of(line, wall.name)
	drawn := [i | some i, layer in wall.layers; layer.family == item.family; not layer.insulates]
	count(drawn) > 0
	every i in drawn {
		some layer in array.slice(wall.layers, 0, i)
		layer.insulates
	}
}

_room_side(line) := [{"slot": slot, "text": text} |
	some slot in data.vapor.cold_rooms.side_slots
	text := line.texts[slot]
	_is_of_room_side(lower(text))
]

# The same words stand in many rows.
_is_of_room_side(text) if {
	regex.match(data.vapor.cold_rooms.room_side, text)
	not regex.match(data.vapor.cold_rooms.warm_side, text)
}

# The row's place tells the room, or the row of its wall type does.
_cold_room(line) := [{"line": told.line, "slot": told.slot, "text": told.text} |
	some told in array.concat(
		[{"line": line, "slot": slot, "text": object.get(line.texts, slot, "")} | some slot in ["place", "group", "remark"]],
		[{"line": wall, "slot": slot, "text": text} |
			some wall in wall_type.of(line)
			some slot, text in wall.texts
		],
	)
	regex.match(data.vapor.cold_rooms.words, lower(told.text))
	not regex.match(data.vapor.cold_rooms.beside, lower(told.text))
]
