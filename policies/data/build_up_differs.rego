# METADATA
# title: Row and wall type tell two thicknesses
# description: |
#   The row has a board or insulation of one thickness, and the build-up of its wall type, on a table of its own, has
#   the same of another. Whoever buys goes by the row, whoever drew the windows and ties by the wall type: the first
#   winters show which was meant, in heat lost or in trim that does not close. It does not apply to edges such as
#   reveals, slab edges and parapets, to a row of several layers, to a wall type that has the material twice, nor to
#   nominal sizes of the other unit.
# custom:
#   id: data-build-up-differs
#   topic: data
#   severity: warning
#   reason: The wall types and the schedule tell two sizes of one layer, and only one of them fits the ties and frames.
#   remedy: Ask which of the two holds, and correct the other; then check the insulation value and the air space.
#   source: the workbook's own wall types
#   basis: source-read
#   example: "row: wool 2 in, wall type W4; wall types: W4, wool 3 in"
#   looks: across rows
package data.build_up_differs

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.wall_type
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	item := _board(line)
	own := _thickness(line, item)
	measure.is_sound(own)
	measure.low(own) == measure.high(own)
	not _is_edge(line)
	not _is_of_several(line, item)
	told := _told(line, item)
	count(told) > 0
	every layer in told { _differ(measure.low(own), layer.mm) }
	message := naming.say("%s is scheduled at %s, but the build-up of %s has %s", [
		naming.plain(item),
		measure.as_said("length", own),
		told[0].wall,
		measure.written(told[0].mm, "length", own),
	])
	related := [finding.related_address(layer.at, words.quoted(layer.text)) | some layer in told]
	found := finding.at_with(line, [_cell(line, item)], message, {"related": related})
}

# That of its column, else the one that its own cell tells beside the board ("2 in. of wool"). Insulation over the
# row's own sheet has a column of its own, or its thickness beside it.
_thickness(line, item) := line.figures.insulation_mm if {
	item.slot in data.data.build_up.over
} else := line.figures.thickness_mm if {
	not item.slot in data.data.build_up.over
} else := line.figures.board_mm if not item.slot in data.data.build_up.over

_cell(line, item) := "insulation_thickness" if {
	item.slot in data.data.build_up.over
	line.cells.insulation_thickness
} else := line.figures.insulation_mm.at.cell if {
	item.slot in data.data.build_up.over
} else := "thickness" if {
	line.figures.thickness_mm
} else := line.figures.board_mm.at.cell

# A row of one material only: the thickness of another may stand beside that of a sheet.
_board(line) := items[0] if {
	items := facts.main_items(line)
	count(items) == 1
	items[0].class in data.data.build_up.classes
	not items[0].slot == "layers"
}

# The one insulation over the row's own sheet, where a column tells its thickness, or its own words do.
_board(line) := items[0] if {
	line.figures.insulation_mm
	items := _over(line)
	count(items) == 1
	not facts.main_items(line)[0].class in data.data.build_up.classes
}

_over(line) := sized if {
	sized := [item | some item in _insulation(line, data.data.build_up.over); item.thickness_mm]
	count(sized) > 0
} else := _insulation(line, data.data.build_up.beside)

_insulation(line, slots) := [item |
	some item in facts.items_in(line, slots)
	item.class == "insulation"
	item.polarity == "yes"
]

_differ(a, b) if abs(a - b) > data.data.build_up.share * max([a, b])

_is_edge(line) if regex.match(data.data.build_up.edges, lower(line.place))

_is_edge(line) if regex.match(data.data.build_up.edges, lower(object.get(line.texts, "type", "")))

_is_of_several(line, _) if {
	some slot in ["thickness", "material", "type", "remark", "place"]
	regex.match(data.data.build_up.several, lower(line.texts[slot]))
}

_is_of_several(line, item) if {
	item.slot in data.data.build_up.over
	regex.match(data.data.build_up.several_over, lower(line.texts[item.slot]))
}

# Another row has the rest of it, unless that has the whole of it, at another drop of the wall.
_is_of_several(line, item) if {
	some other in _rows[lower(line.group)]
	other.id != line.id
	other.place == line.place
	_who(facts.main_items(other)[0]) == _who(item)
	not _is_whole(other, item)
}

_is_whole(line, item) if {
	some layer in _told(line, item)
	not _differ(measure.low(_thickness(line, facts.main_items(line)[0])), layer.mm)
}

_rows := {group: rows |
	some group in {lower(line.group) | some line in facts.live_lines; line.group != ""}
	rows := [line | some line in facts.live_lines; lower(line.group) == group]
}

# The one layer of this material in each wall type that the row names.
_told(line, item) := [layers[0] |
	some name in _names(line)
	layers := [layer | some layer in _walls[name]; _is_of(layer, item); _is_elsewhere(layer, line)]
	count(layers) == 1
	layers[0].mm > 0
	not regex.match(data.data.build_up.framed, lower(layers[0].text))
]

_is_of(layer, item) if layer.who == _who(item)

# The build-up may tell in words what the row tells by its product: "wool 3 in", and "I-3".
_is_of(layer, item) if {
	item.product != ""
	item.class == "insulation"
	layer.who == item.family
}

# The rows of the schedule itself are no build-up of it.
_is_elsewhere(layer, line) if layer.table != line.table

_names(line) := ({name |
	some name in regex.split(`[\s,;/&+()]+`, lower(line.group))
	name != ""
} | {name |
	name := regex.split(`[\s,;:]+`, lower(line.place))[0] # "W3, stair tower, south"
	regex.match(`\d`, name)
}) | {name |
	name := lower(trim_space(line.texts.type)) # a column of wall types
	regex.match(data.lib.scope.wall_code, name)
}

_walls := {name: layers |
	some name in {layer.name | some layer in _layers}
	layers := [layer | some layer in _layers; layer.name == name]
}

# mm is 0 where the build-up does not say how thick.
_layers := [layer |
	some line in facts.live_lines
	some item in line.items
	item.polarity == "yes"
	_is_layer(line, item)
	some wall in _walls_of(line)
	layer := {
		"name": lower(wall),
		"wall": wall,
		"line": line.id,
		"table": line.table,
		"who": _who_in(line, item),
		"mm": _mm(line, item),
		"text": object.get(item, "clause", item.text),
		"at": item.at,
	}
]

# A build-up stands in one cell, or has a row for each layer, with its number.
_is_layer(line, item) if {
	item.slot == "layers"
	not _is_told_beside(line, item)
	not _is_tag_after(line, item)
}

# "4 in. mineral wool WB-2": the words have the thickness, and the tag after them tells which wool it is.
_is_tag_after(line, item) if {
	item.product != ""
	object.get(item, "thickness_mm", null) == null # "not is_number(...)" is undefined without it
	count(_said_with(line, item, [""])) > 0
}

_said_with(line, item, products) := [other |
	item.slot == "layers"
	some other in line.items
	other.id != item.id
	other.slot == "layers"
	other.family == item.family
	other.clause == item.clause
	other.product in products
]

_who_in(line, item) := _who(tag) if {
	item.product == ""
	tags := [other | some other in line.items; other.product != ""; item in _said_with(line, other, [""])]
	count(tags) == 1
	tag := tags[0]
} else := _who(item)

# Its insulation may have columns of its own, with the thickness that the build-up leaves out.
_is_layer(line, item) if {
	item.slot in data.data.build_up.beside
	_is_told_beside(line, item)
}

# A list of wall types without a build-up may have a column for the insulation alone, with its size.
_is_layer(line, item) if {
	item.slot in data.data.build_up.beside
	item.class == "insulation"
	item.thickness_mm
	not line.cells.install
	not _has_build_up(line)
}

_has_build_up(line) if {
	some layer in line.items
	layer.slot == "layers"
}

_is_told_beside(line, item) if {
	not line.cells.install
	some layer in line.items
	layer.slot == "layers"
	own := _insulation(line, data.data.build_up.beside)
	count(own) == 1
	_who(own[0]) == _who(item)
	line.figures.thickness_mm
}

_is_layer(line, item) if {
	object.get(line, "order", "") != ""
	item.slot in {"material", "tag"}
	not line.cells.install
}

_mm(line, item) := item.thickness_mm if {
	item.slot == "layers"
} else := item.thickness_mm if {
	item.slot in data.data.build_up.beside
} else := measure.low(line.figures.thickness_mm) if {
	item.slot in data.data.build_up.beside
	measure.is_sound(line.figures.thickness_mm)
} else := measure.low(line.figures.thickness_mm) if {
	measure.is_sound(line.figures.thickness_mm)
	count([other | some other in line.items; _is_layer(line, other)]) == 1
} else := 0

# The rows of the further layers leave the cell of the wall type empty.
_walls_of(line) := wall_type.names(line) if {
	count(wall_type.names(line)) > 0
} else := names if {
	object.get(line, "order", "") != ""
	heads := [other | some other in _heads; other.table == line.table; other.row < line.row]
	last := max([other.row | some other in heads])
	names := {name | some other in heads; other.row == last; some name in other.names}
}

_heads := [{"table": line.table, "row": line.row, "names": names} |
	some line in facts.live_lines
	some item in line.items
	_is_layer(line, item)
	names := wall_type.names(line)
	count(names) > 0
]

_who(item) := item.product if {
	item.product != ""
} else := item.family
