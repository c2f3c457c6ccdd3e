# METADATA
# title: What the wall type tells of the inside
# description: |
#   The build-up of a wall type, on a table of its own, has filled studs with a film on the room side and an open sheet
#   outside; a row of that wall has a tight sheet in its place, or a tight board over the open one.
package lib.inside_type

import data.lib.facts
import data.lib.inside
import data.lib.section
import data.lib.vaporclass
import data.lib.wall_type

# pairs lists {"line", "outer": item, "film": item of the wall type, "open": the sheet that may dry outward, "wall"}.
pairs := [{"line": line, "outer": outer.item, "open": outer.open, "film": film, "wall": wall} |
	count(_films) > 0
	some line in facts.live_lines
	line.role in _roles
	not line.id in section.judged_lines
	not _is_edge(line)
	not _has_no_film(line)
	wall := [one | some one in wall_type.of(line); one.id in object.keys(_films)][0]
	film := _films[wall.id]
	outer := _outer(line, wall)
]

# added lists films and vinyl that a row puts on the room side of a wall type whose smart retarder lets it dry there:
# {"line", "film", "smart": item of the wall type, "wall"}.
added := [{"line": line, "film": film, "smart": smart, "wall": wall} |
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not _has_no_film(line)
	film := [item |
		some item in facts.items_in(line, data.vapor.barriers.inside_slots)
		item.family in data.vapor.barriers.inside_families
		facts.is_there(item)
		inside.is_put_inside(item)
		not regex.match(data.vapor.inboard.film_gone, lower(object.get(line.texts, item.slot, "")))
	][0]
	every item in line.items { not item.family in data.vapor.barriers.smart_families } # it tells itself which of the two
	some wall in wall_type.of(line)
	smart := [item |
		some item in wall.items
		facts.is_there(item)
		item.family in data.vapor.barriers.smart_families
	][0]
	not _is_built(film, wall)
]

# A row of a board may close the outside as well as that of a sheet.
_roles := array.concat(data.performance.sheets.vapor_roles, ["insulation"])

# _films holds the film of each wall type whose studs are filled, by the row of the wall.
_films := {wall.id: film |
	some wall in facts.live_lines
	wall.texts.layers != ""
	not facts.said(wall, "studs_empty")
	some wool in wall.items
	facts.is_there(wool)
	wool.family in data.vapor.barriers.batt_families
	film := [item |
		some item in wall.items
		facts.is_there(item)
		item.family in data.vapor.barriers.film_families
		vaporclass.of(item) == "I"
	][0]
}

_outer(line, wall) := {"item": board, "open": open} if {
	line.role == "insulation"
	board := facts.main_items(line)[0]
	board.class == "insulation"
	vaporclass.of(board) in data.vapor.barriers.foam_vapor
	not _is_built(board, wall)
	open := [item |
		some item in facts.items_in(line, data.vapor.barriers.under_slots)
		item.class in data.vapor.barriers.sheet_classes
		vaporclass.is_open(item)
	][0]
} else := {"item": sheet, "open": open} if {
	line.role != "insulation"
	sheet := facts.main_items(line)[0]
	sheet.class in data.vapor.barriers.sheet_classes
	not sheet.family in data.vapor.barriers.inside_families
	vaporclass.of(sheet) == "I"
	not _is_built(sheet, wall)
	open := [item |
		some item in wall.items
		facts.is_there(item)
		item.class in data.vapor.barriers.sheet_classes
		vaporclass.is_open(item)
	][0]
} else := {"item": board, "open": open} if {
	line.role != "insulation"
	open := facts.main_items(line)[0]
	vaporclass.is_open(open)
	board := [item |
		some item in inside.outboard(line)
		vaporclass.of(item) in data.vapor.barriers.foam_vapor
		not _is_built(item, wall)
	][0]
}

# The wall type has the same: then the wall type itself is told of.
_is_built(item, wall) if {
	some other in wall.items
	facts.is_there(other)
	_is_same(item, other)
}

_is_same(item, other) if {
	item.product != ""
	item.product == other.product
}

_is_same(item, other) if {
	item.product == ""
	item.family == other.family
}

# Strips, and what lies in the ground or under a roof, are no layer of the field of the wall.
_is_edge(line) if section.is_strip(line)

_is_edge(line) if {
	some words in array.concat(data.vapor.barriers.excused_words, [data.vapor.barriers.local_words])
	regex.match(words, lower(line.place))
}

_is_edge(line) if section.is_local_detail(line)

_is_edge(line) if {
	some signal in data.vapor.barriers.below_signals
	facts.said(line, signal)
}

# The row leaves the film out.
_has_no_film(line) if facts.denied(line, "vapor_closed_inside")

_has_no_film(line) if {
	some item in line.items
	item.family in data.vapor.barriers.inside_families
	not facts.is_there(item)
}
