# METADATA
# title: Rows of wall types
# description: |
#   What the row of a build-up is called by, where a table of its own lists the walls of the schedule, and which of
#   those a row of the schedule stands under.
# custom:
#   looks: across rows
package lib.wall_type

import data.lib.facts

# names of a wall type: the short words in the first columns of its row, as they are written.
names(line) := {name |
	some slot in ["type", "tag", "mark", "group"]
	name := trim_space(line.texts[slot])
	name != ""
	count(name) <= data.lib.wall_types.longest_name
}

# of lists the rows of a list of walls that a row of the schedule stands under: "W4", "W4 LAUNDRY WALL - BRICK".
of(line) := [wall |
	some wall in _walls
	wall.table != line.table
	_is_of(line, wall.mark)
]

_walls := [object.union(wall, {"mark": mark}) |
	some wall in facts.live_lines
	wall.texts.layers != ""
	mark := _code(wall)
]

# A list of walls may head their codes "Type".
_code(wall) := wall.mark if {
	wall.mark != ""
} else := code if {
	code := trim_space(wall.texts.type)
	regex.match(data.lib.scope.wall_code, code)
}

_is_of(line, mark) if trim_space(line.texts.type) == mark

_is_of(line, mark) if line.group == mark

_is_of(line, mark) if {
	startswith(line.group, mark)
	regex.match(data.lib.wall_types.end, substring(line.group, count(mark), 1))
}

_is_of(line, mark) if code_of_place(line) == mark

# code_of_place is the code of the wall where a column of walls beside one of places is read as the first part of the
# place: "W4; north, L2". Undefined without one.
code_of_place(line) := code if {
	parts := split(line.place, ";")
	count(parts) > 1
	code := trim_space(parts[0])
	regex.match(data.data.walls.code, lower(code))
}
