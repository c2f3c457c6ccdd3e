# METADATA
# title: How a faulty section is told
# description: |
#   Where the finding stands, what lies where in the section, and how cold it is there.
# custom:
#   looks: across rows
package lib.fault

import data.lib.facts
import data.lib.finding
import data.lib.wall_type
import data.lib.winter
import data.lib.words

outer(fault) := fault.layers[fault.outer]

# outer_text calls the outer layer, and its wall where the finding stands at a row of the schedule.
outer_text(fault) := sprintf("%s of wall type %s", [outer(fault).text, put.wall]) if {
	_installed(fault)
	put := _listed_as(facts.lines_by_id[outer(fault).line], outer(fault))
} else := outer(fault).text

inner(fault) := fault.layers[fault.inner]

# outer_line is the row of the outer layer, where the reader would change it: of a section that a list of walls tells,
# the first row of the schedule that puts on its product in that wall.
outer_line(fault) := _installed(fault) if {
	_installed(fault)
} else := facts.lines_by_id[outer(fault).line]

# _installed is the first row of the schedule that puts on the outer layer of a wall that a list tells layer by layer;
# undefined where none does.
_installed(fault) := [line |
	wall := facts.lines_by_id[outer(fault).line]
	put := _listed_as(wall, outer(fault))
	some line in facts.live_lines
	line.table != wall.table
	facts.main_items(line)[0].product == put.product
	wall_type.is_of(line, put.wall)
][0]

# _listed_as is the product of a layer, and what the list calls its wall: of a wall told in one row, or by a row each.
_listed_as(wall, layer) := {"product": item.product, "wall": wall.mark} if {
	wall.texts.layers != ""
	wall.mark != ""
	_in_order(wall)
	some item in wall.items
	item.id == layer.item
	item.product != ""
} else := {"product": item.product, "wall": wall.group} if {
	wall.order != ""
	wall.group != ""
	not wall.dates.install
	item := facts.main_items(wall)[0]
	item.product != ""
}

# A cell, or cells one below another, tell the layers as they lie; a column for each may not.
_in_order(wall) if count({item.at.cell | some item in wall.items; item.slot == "layers"}) == 1

_in_order(wall) if count({item.at.row | some item in wall.items; item.slot == "layers"}) > 1

# cells marks the outer layer, and the cell of the build-up where the row tells it.
cells(fault) := ["material", "tag"] if {
	_installed(fault)
} else := array.concat(["material", "tag", "layers"], [cell | cell := outer(fault).at.cell; cell != ""])

# related names the rows of the inner barrier and of the insulation inside of the outer one.
related(fault) := array.concat(_listed(fault), _inside(fault))

# _listed is the row of the list of walls, where the finding stands at that of the schedule.
_listed(fault) := [finding.related(facts.lines_by_id[outer(fault).line], ["layers"], "the layers of the wall") |
	_installed(fault)
]

_inside(fault) := [finding.related(line, ["material", "tag"], what) |
	some i, layer in array.slice(fault.layers, 0, fault.outer)
	what := _what(fault, i, layer)
	layer.line != outer(fault).line
	line := facts.lines_by_id[layer.line]
]

_what(fault, i, _) := "the inner barrier" if i == fault.inner

_what(fault, i, layer) := "the insulation" if {
	i != fault.inner
	layer.insulates
}

# cold words the winter: "23 °F in the three coldest months".
cold(fault) := sprintf("%s in the three coldest months", [winter.written(fault.winter)])

# share words what lies outside and what would have to: " (8% of the resistance lies outside it, 38% is needed)".
share(fault) := sprintf(" (%s of the resistance lies outside it, %s is needed)", [
	words.percent(outer(fault).share),
	words.percent(fault.needed),
]) if {
	is_number(outer(fault).share)
	is_number(fault.needed)
} else := ""
