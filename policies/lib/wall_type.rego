# METADATA
# title: Rows of wall types
# description: |
#   What the row of a build-up is called by, where a table of its own lists the walls of the schedule, and which of
#   those a row of the schedule stands under.
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
# Where a list calls its walls by another column than that of marks, what is found has that as its mark.
of(line) := [object.union(one.wall, {"mark": one.name}) |
	some one in _walls
	one.wall.table != line.table
	_is_of(line, one.name)
]

# is_of: the row stands under the wall that is called so.
is_of(line, mark) if _is_of(line, mark)

_walls := [{"wall": wall, "name": name} |
	some wall in facts.live_lines
	wall.texts.layers != ""
	some name in _called(wall)
]

_called(wall) := {wall.mark} if {
	wall.mark != ""
} else := {name | some name in names(wall); regex.match(data.data.walls.code, lower(name))}

_is_of(line, mark) if trim_space(line.texts.type) == mark

_is_of(line, mark) if line.group == mark

# A column of build-ups may name each by its code in the list of them: "W3".
_is_of(line, mark) if trim_space(line.texts.layers) == mark

_is_of(line, mark) if {
	startswith(line.group, mark)
	regex.match(data.lib.wall_types.end, substring(line.group, count(mark), 1))
}

_is_of(line, mark) if code_of_place(line) == mark

_is_of(line, mark) if mark in _ends_of_place(line)

# One column for the place and its wall: "Tower E / EW3".
_is_of(line, mark) if mark in codes_of_group(line)

# code_of_place is the code of the wall where a column of walls beside one of places is read as the first part of the
# place: "W4; north, L2". Undefined without one.
code_of_place(line) := code if {
	parts := split(line.place, ";")
	count(parts) > 1
	code := trim_space(parts[0])
	regex.match(data.data.walls.code, lower(code))
}

# A place may end in the code of its wall, and in no other: "Gym wall N, W3".
_ends_of_place(line) := {code |
	parts := split(line.place, ",")
	count(parts) > 1
	code := trim_space(parts[count(parts) - 1])
	regex.match(data.data.walls.code, lower(code))
}

# codes_of_group lists the codes of walls in a group that tells the place too: "Tower E / EW3".
codes_of_group(line) := {code |
	parts := regex.split(data.data.walls.place_signs, line.group)
	count(parts) > 1
	some part in parts
	code := trim_space(part)
	regex.match(data.data.walls.code, lower(code))
}

# told lists by slot the codes that the words of a row call a wall type, as it stands: "wall type W9".
told(line) := {slot: codes |
	some slot in data.data.walls.telling
	some text in [line.texts[slot]]
	codes := {found[2] |
		some found in regex.find_all_string_submatch_n(data.data.walls.told, text, -1)
		found[1] == ""
	}
	count(codes) > 0
}
