# METADATA
# title: What a row adds inside of its section
# description: |
#   A wall type told layer by layer, on a table of its own, has a tight sheet and nothing tight inside of it; a row of
#   that wall puts a film, foil or vinyl on the room side.
# custom:
#   looks: across rows
package lib.inside_section

import data.lib.facts
import data.lib.inside
import data.lib.section
import data.lib.wall_type

# added lists {"line", "inner": words, "cell", "vinyl", "outer": layer, "wall": section}.
added := [{
	"line": line,
	"inner": film.text,
	"cell": film.at.cell,
	"vinyl": inside.is_vinyl(film.family, film.text),
	"outer": outer,
	"wall": wall,
} |
	some wall in _opened
	some line in facts.live_lines
	wall_type.is_of(line, wall.name)
	line.table != wall.table
	not line.id in section.told_lines
	film := facts.main_items(line)[0]
	film.family in data.vapor.barriers.inside_families
	inside.tells_inside(line)
	outer := wall.layers[wall.outer]
]

# _opened are the sections with a tight sheet that leave the inside of it open.
_opened := [object.union(wall, {"outer": i, "table": facts.lines_by_id[wall.lines[0]].table}) |
	some wall in section.walls
	wall.name != ""
	i := [i | some i, layer in wall.layers; _is_tight_sheet(layer)][0]
	every layer in array.slice(wall.layers, 0, i) {
		not _is_film(layer)
	}
]

_is_tight_sheet(layer) if {
	layer.barrier
	layer.class in data.vapor.barriers.sheet_classes
	not layer.family in data.vapor.barriers.inside_families
}

_is_film(layer) if layer.barrier

_is_film(layer) if layer.family in data.vapor.barriers.inside_families
