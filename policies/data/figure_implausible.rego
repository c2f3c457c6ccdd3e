# METADATA
# title: Figure that no such material has
# description: |
#   A sheet of 40 mm, a primer that may be put on at 200 degrees: the unit slipped, or a digit. The wrong figure
#   is bought and built, or hides a limit that the plan breaks. Where a slip of the unit explains the figure it is
#   an error and the message says which; else it is asked about, and of what cells tell in words, such as laps, it is
#   a note, since it may have been read otherwise than it is meant. It does not apply to figures inside the widest
#   range that is sold.
# custom:
#   id: data-figure-implausible
#   topic: data
#   severity: error
#   reason: The figure is most likely in another unit than its column says.
#   remedy: Ask for the figure and its unit, and correct the cell.
#   source: ranges of common practice
#   basis: common-practice
#   example: "thickness 40 in a column of mm"
package data.figure_implausible

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.plausible

findings contains finding.at_with(line, measure.cell(figure, kind), _message(kind, role, figure), extra) if {
	some line in facts.live_lines
	some kind, figure in line.figures
	measure.is_sound(figure)
	role := _role_of(line)
	plausible.slip(kind, role, figure)
	not _may_be_width(line, kind, figure)
	not _has_no_kind(line, kind)
	extra := {"severity": _severity(kind, role, figure)}
}

findings contains finding.for_product(product, measure.cell(figure, kind), message, extra) if {
	some product in input.products
	some kind, figure in product.figures
	measure.is_sound(figure)
	role := _role(product)
	plausible.slip(kind, role, figure)
	message := sprintf("%s: %s", [product.tag, _message(kind, role, figure)])
	extra := {"severity": _severity(kind, role, figure)}
}

_role_of(line) := "film" if {
	facts.main_items(line)[0].family in data.data.plausible.films
} else := line.role

_role(product) := "film" if {
	product.family in data.data.plausible.films
} else := product.role

_severity(kind, role, figure) := "error" if {
	plausible.cause(kind, role, figure)
} else := "note" if {
	kind in data.data.plausible.worded
} else := "warning"

_message(kind, role, figure) := sprintf("%s %s is not to be believed of a %s%s", [
	_name(kind),
	_said(kind, figure),
	role,
	_cause(kind, role, figure),
])

_said(kind, figure) := measure.as_said(_measure(kind), figure)

_name(kind) := object.get(data.lib.measures.names, kind, kind)

_measure(kind) := data.lib.measures.kinds[kind]

_cause(kind, role, figure) := sprintf("; it looks as if %s (%s)", [cause.says, right]) if {
	cause := plausible.cause(kind, role, figure)
	mm := measure.low(figure) * cause.factor
	right := measure.written(mm, "length", {"text": "", "unit": "mm"})
} else := ""

# What no word of the row tells the kind of may be as thick as it likes.
_has_no_kind(line, "thickness_mm") if {
	item := facts.main_items(line)[0]
	item.family == ""
	count(item.keys) == 0
}

# Below a heading that says "mm" and no more, strips and beads are told by their width, as their own data shows. What
# looks like the product's own thickness in another unit is none.
_may_be_width(line, "thickness_mm", figure) if {
	figure.assumed
	line.role in data.data.plausible.widths
	figure.min > data.data.plausible.least_width_mm
	not _is_own_thickness(line, figure)
	not _says_thickness(line)
}

_is_own_thickness(line, figure) if {
	own := measure.low(facts.product_of(facts.main_items(line)[0]).figures.thickness_mm)
	meant := plausible.cause("thickness_mm", line.role, figure).factor * figure.min
	abs(meant - own) < own / 2
}

_says_thickness(line) if {
	some table in input.reading.tables
	table.id == line.table
	some column in table.columns
	column.slot == "thickness"
	regex.match(data.data.plausible.thickness_words, lower(column.heading))
}
