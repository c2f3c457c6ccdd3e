# METADATA
# title: Tight sheet on a wall drawn with an open one
# description: |
#   The wall type has a vapor-open sheet outside because a film closes it inside; the row puts a tight sheet there, as
#   happens when the open one is late. The wall then has no side left to dry to, and little of one where the retarder
#   inside is a face of kraft, of class II. It does not apply to wall types without such a film, to those that have a
#   tight sheet outside themselves, nor to strips at openings and edges.
# custom:
#   id: vapor-open-drawn
#   topic: vapor
#   severity: error
#   reason: With a film inside and a tight sheet outside the wall dries to neither side.
#   remedy: Put on the vapor-open sheet of the wall type, or take out the film and show that the wall dries.
#   source: the workbook's own wall types; IRC R702.7 on class I on both sides
#   basis: source-read
#   example: "row: SA-1 (3 ng), wall type T3; wall types: T3, VP-1 (1200 ng), plywood, studs with batt, polyethylene"
#   looks: across rows
package vapor.open_drawn

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.section
import data.lib.vaporclass
import data.lib.wall_type

findings contains finding.at_with(one.line, ["material", "tag", "type", "group"], message, more) if {
	some drawn in _open_walls
	some one in _tight_rows
	wall_type.is_of(one.line, drawn.name)
	message := naming.say("%s is vapor-tight, and wall type %s has %s there, which is vapor-open, with %s inside", [
		naming.plain(one.item),
		drawn.name,
		drawn.sheet.text,
		drawn.film.text,
	])
	related := [
		finding.related(facts.lines_by_id[drawn.sheet.line], ["material", "tag", "layers"], "the sheet of the wall type"),
		finding.related(facts.lines_by_id[drawn.film.line], ["material", "tag", "layers"], "the film inside"),
	]
	more := {"related": related, "severity": _severity(drawn.film)}
}

# A film closes the wall; a face of kraft still lets it dry a little.
_severity(film) := "error" if film.vapor == "I"

_severity(film) := "warning" if film.vapor != "I"

# Walls with a film inside of their insulation and no sheet outside of it but an open one.
_open_walls := [{"name": wall.name, "sheet": sheet, "film": film} |
	some wall in section.walls
	some i, film in wall.layers
	film.family in data.vapor.barriers.inside_families
	j := min([at | some at, sheet in wall.layers; _is_open(sheet)]) # of "VP-1 or VP-2" the first
	sheet := wall.layers[j]
	_insulates(array.slice(wall.layers, i + 1, j))
	every layer in array.slice(wall.layers, i + 1, count(wall.layers)) { not layer.barrier }
]

_is_open(layer) if {
	_is_sheet(layer)
	layer.vapor == "none"
}

_is_sheet(layer) if {
	layer.class in data.vapor.barriers.sheet_classes
	not layer.family in data.vapor.barriers.inside_families
}

_insulates(layers) if {
	some layer in layers
	layer.insulates
}

# Rows of one tight sheet that covers the wall.
_tight_rows := [{"line": line, "item": items[0]} |
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not line.role in data.vapor.barriers.not_roles
	not line.id in section.told_lines
	items := facts.main_items(line)
	count(items) == 1
	_is_sheet(items[0])
	vaporclass.is_tight(items[0])
	not section.is_strip(line)
	not section.is_local_detail(line)
	not regex.match(data.vapor.barriers.local_words, lower(line.place))
]
