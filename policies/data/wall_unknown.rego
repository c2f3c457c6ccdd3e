# METADATA
# title: Wall type that is not in the list
# description: |
#   The workbook lists its wall types, on a table of their build-ups or in notes of one wall a line, and this row names
#   one that the list lacks: a slip of the pen, or a wall that was dropped or never drawn. Its layers, insulation and
#   vapor control could not be checked. Each wall is told once. What a remark or place calls a wall type is one, also
#   where the rows are in no groups of walls, and so is the code that a place ends in, or that signs part from the rest
#   of it. It does not apply to codes of other letters than the listed ones (roofs, soffits, partitions), nor to
#   variants of a listed wall (W2a of W2), nor to a wall that is told of as a former one.
# custom:
#   id: data-wall-unknown
#   topic: data
#   severity: error
#   reason: Nobody can tell which layers this wall has, so neither its insulation nor its vapor control can be checked.
#   remedy: Correct the wall type, or add its build-up to the list.
#   source: the workbook's own wall types
#   basis: source-read
#   example: "a row of wall type W9; the list has W1 to W7"
#   looks: across rows
package data.wall_unknown

import data.lib.facts
import data.lib.finding
import data.lib.wall_type

findings contains finding.at_with(lines[0], _cells(lines[0]), message, {"related": related}) if {
	some name, lines in _unknown
	message := sprintf("Wall type %s is not in the list of wall types, which has %s", [
		_called(lines[0]),
		concat(", ", sort(_listed[_letters(name)])),
	])
	related := [finding.related(line, _cells(line), "the same wall type") |
		some line in array.slice(lines, 1, count(lines))
	]
}

# Words that call a code a wall type need no rows that use the list.
findings contains finding.at_with(first.line, [first.slot], message, {"related": related}) if {
	some name in {one.name | some one in _told}
	not _unknown[name]
	not _is_listed(name)
	listed := _listed[_letters(name)]
	count(listed) >= data.data.walls.least
	ones := [one | some one in _told; one.name == name]
	first := ones[0]
	message := sprintf("Wall type %s is not in the list of wall types, which has %s", [
		first.code,
		concat(", ", sort(listed)),
	])
	related := [finding.related(one.line, [one.slot], "the same wall type") |
		some one in array.slice(ones, 1, count(ones))
	]
}

_told := [{"name": _plain(code), "code": code, "line": line, "slot": slot} |
	some line in facts.live_lines
	not _is_build_up(line)
	some slot, codes in wall_type.told(line)
	some code in codes
	not facts.products_by_id[code]
]

_is_listed(name) if name in _names

_is_listed(name) if regex.replace(name, data.data.walls.variant, "$1") in _names

# The rows of each wall that the list lacks.
_unknown := {name: lines |
	count(_all) > 0
	some name, lines in _used
	_is_explained(_letters(name))
	not _is_listed(name)
}

# The list is that of the schedule's walls: it has several that the schedule uses, and most of them.
_is_explained(letters) if {
	known := [name | some name in _listed[letters]; _used[_plain(name)]]
	count(known) >= data.data.walls.least
	missing := [name | some name, _ in _used; _letters(name) == letters; not name in _names]
	count(missing) < count(known)
}

_used := {name: lines |
	all := array.concat(array.concat(_named, _layered), array.concat(_typed, _placed))
	some name in {one.name | some one in all}
	lines := [one.line | some one in all; one.name == name]
}

_named := [{"name": name, "line": line} |
	some line in facts.live_lines
	line.cells.group
	not _is_build_up(line)
	some part in regex.split(data.data.walls.between, line.texts.group)
	regex.match(data.data.walls.code, lower(part))
	name := _plain(part)
]

# A column of build-ups may hold no more than the code of the one that the list tells.
_layered := [{"name": _plain(code), "line": line} |
	some line in facts.live_lines
	not line.cells.group
	line.cells.layers
	not _is_build_up(line)
	code := trim_space(line.texts.layers)
	regex.match(data.data.walls.code, lower(code))
	not facts.products_by_id[code]
]

# A column headed "Type" holds the code of the wall and nothing else; that of a product is no wall.
_typed := [{"name": _plain(code), "line": line} |
	some line in facts.live_lines
	not line.cells.group
	line.cells.type
	not _is_build_up(line)
	code := trim_space(line.texts.type)
	regex.match(data.data.walls.code, lower(code))
	not facts.products_by_id[code]
]

_placed := [{"name": _plain(code), "line": line} |
	some line in facts.live_lines
	not line.cells.group
	not _is_build_up(line)
	not _is_layered(line)
	code := _code_of_place(line)
	not facts.products_by_id[code]
]

# A place may end in the code of its wall ("North stair, EW-3").
_code_of_place(line) := wall_type.code_of_place(line)

_code_of_place(line) := code if {
	not contains(line.place, ";")
	parts := split(line.place, ",")
	count(parts) > 1
	code := trim_space(parts[count(parts) - 1])
	regex.match(data.data.walls.code, lower(code))
} else := code if {
	not contains(line.place, ";")
	parts := regex.split(data.data.walls.place_signs, line.place)
	count(parts) > 1
	code := [part |
		some part in parts
		regex.match(data.data.walls.code, lower(part))
		_listed[_letters(_plain(part))]
	][0]
}

_cells(line) := ["group", "type"] if {
	_is_typed(line)
} else := ["layers"] if {
	_is_layered(line)
} else := ["place"]

_is_layered(line) if regex.match(data.data.walls.code, lower(trim_space(line.texts.layers)))

_is_typed(line) if line.cells.group

_is_typed(line) if line.cells.type

_called(line) := line.texts.group if {
	line.cells.group
} else := trim_space(line.texts.layers) if {
	not _is_typed(line)
	_is_layered(line)
} else := _code_of_place(line) if {
	not _is_typed(line)
} else := trim_space(line.texts.type)

_names := {_plain(name) | some name in _all}

# The listed walls by the letters of their codes.
_listed := {letters: names |
	some letters in {_letters(_plain(name)) | some name in _all}
	names := {name | some name in _all; _letters(_plain(name)) == letters}
}

_all contains name if {
	some line in facts.live_lines
	_is_build_up(line)
	some name in wall_type.names(line)
	regex.match(data.data.walls.code, lower(name))
}

_all contains name if {
	some note in input.project.notes
	some pattern in [data.data.walls.noted, data.data.walls.headed]
	some found in regex.find_all_string_submatch_n(pattern, note.text, -1)
	name := found[1]
}

# A page titled as a list of walls has one in each line that begins with a code.
_all contains name if {
	some title in input.project.notes
	regex.match(data.data.walls.title, lower(title.text))
	some note in input.project.notes
	note.at.sheet == title.at.sheet
	note.at.row > title.at.row
	some found in regex.find_all_string_submatch_n(data.data.walls.row, note.text, 1)
	name := found[1]
}

# A row that tells the layers of a wall, and no work.
_is_build_up(line) if {
	not line.cells.install
	_has_layers(line)
}

# Its layers may be told in words that name no material ("see A-602").
_is_build_up(line) if {
	line.cells.layers
	line.mark != ""
	count({slot | some slot in data.data.walls.work; line.cells[slot]}) == 0
}

# A row without a known material ("curtain wall, see elevations") in a table whose other rows tell layers of walls.
_is_build_up(line) if {
	line.cells.layers
	not line.cells.install
	told := {slot | some slot in data.data.walls.work; line.cells[slot]}
	count(told - _told_of_walls[line.table]) == 0
}

# A row that is one numbered layer of its wall, and tells of no work either.
_is_build_up(line) if {
	line.order != ""
	line.cells.order
	line.cells.group
	count({slot | some slot in data.data.walls.work; line.cells[slot]}) == 0
}

# The columns of work that a table fills for walls told layer by layer, by tables that list some.
_told_of_walls := {table: slots |
	walls := [line | some line in facts.live_lines; not line.cells.install; _has_layers(line)]
	some table in {wall.table | some wall in walls}
	slots := {slot | some wall in walls; wall.table == table; some slot in data.data.walls.work; wall.cells[slot]}
}

_has_layers(line) if {
	some item in line.items
	item.slot == "layers"
}

# A code is the same with a hyphen and without: EW-7 is EW7. Of one with a letter for its number (W-C) both parts stay.
_plain(name) := regex.replace(lower(name), data.data.walls.lettered, "$1 $2") if {
	regex.match(data.data.walls.lettered, lower(name))
} else := regex.replace(lower(name), `[^\p{L}\d]+`, "")

_letters(name) := regex.find_n(`^\p{L}+`, name, 1)[0]
