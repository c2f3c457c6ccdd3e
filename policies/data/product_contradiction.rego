# METADATA
# title: Row and product data tell two figures
# description: |
#   The row repeats a limit of its product, temperature, days in the sun, permeance or VOC, and the product's data
#   tells another. One of the two is old, and the crew goes by the row. Check against the maker's current sheet
#   and state the limit in one place. It does not apply to figures within rounding of the other unit, nor to
#   thickness, which has a rule of its own, nor to fewer days in the sun than the data allows, nor to a permeance of
#   a board at one thickness beside that of the row's own, nor to a figure that breaks a limit of the project, which
#   is told as that.
# custom:
#   id: data-product-contradiction
#   topic: data
#   severity: warning
#   reason: The row promises what the product's data does not, or forbids what it allows.
#   remedy: Take the product's own sheet, and correct the row or the data.
#   source: the workbook's own product data
#   basis: source-read
#   example: "row: from 20 °F; data of FM-1: 40 °F"
package data.product_contradiction

import data.lib.facts
import data.lib.finding
import data.lib.measure

findings contains finding.at_with(line, cells, message, {"related": [related]}) if {
	some line in facts.live_lines
	product := facts.product_of(facts.main_items(line)[0])
	not product.repeats
	differing := [kind | some kind, _ in data.data.contradict.kinds; _is_other(line, product, kind)]
	some i, kind in differing
	own := line.figures[kind]
	told := product.figures[kind]
	not _is_told(line, differing, i)
	cells := array.concat(["material"], measure.cell(own, kind))
	message := sprintf("the row says %s %s, but the data of %s says %s", [
		_name(line, kind),
		_said(own),
		product.tag,
		_said(told),
	])
	related := finding.related_product(product, measure.cell(told, kind), "its data")
}

# Both ends of a range may differ, and are one mistake of one cell.
_is_told(line, differing, i) if {
	some earlier, kind in differing
	earlier < i
	_range(line, kind) == _range(line, differing[i])
}

_name(line, kind) := _range(line, kind).name

_name(line, kind) := data.lib.measures.names[kind] if not _range(line, kind)

# _range is the range whose two ends one cell of the row tells.
_range(line, kind) := [range |
	some range in data.data.contradict.ranges
	kind in range.of
	cells := {line.figures[end].at.cell | some end in range.of}
	count(cells) == 1
	every end in range.of { line.figures[end].at.cell in cells }
][0]

_is_other(line, product, kind) if {
	own := line.figures[kind]
	told := product.figures[kind]
	measure.is_sound(own)
	measure.is_sound(told)
	_differ(measure.low(own), measure.low(told), data.data.contradict.kinds[kind])
	not _is_stricter(kind, measure.low(own), measure.low(told))
	not _is_told_as_limit(line, kind)
	not _is_of_other_thickness(kind, own, told)
}

# What a foam lets through is told for one inch of it, and a row tells it for its own board.
_is_of_other_thickness("vapor_ng", own, told) if _is_of_thickness(own) != _is_of_thickness(told)

_is_of_thickness(figure) := regex.match(data.data.contradict.of_thickness, lower(figure.text))

# The row's own figure breaks a limit of the project: that is told, and the data beside it is no second mistake.
_is_told_as_limit(line, "air_lsm2") if line.id in {found.line | some found in data.performance.air_row.findings}

_is_told_as_limit(line, "vapor_ng") if line.id in _over_vapor

_over_vapor := {id |
	some found in data.performance.vapor_limit.findings
	some id in array.concat([found.line], [note.line | some note in found.related])
}

_differ(a, b, apart) if abs(a - b) > max([apart, abs(b) * data.data.contradict.share])

# An office may leave a sheet open for fewer days than its maker allows.
_is_stricter(kind, own, told) if {
	kind in data.data.contradict.may_be_less
	own < told
}

_said(figure) := trim_space(sprintf("%s %s", [figure.text, _unit(figure)]))

_unit(figure) := figure.unit if not regex.match(`[\p{L}"″°%]`, figure.text)

_unit(figure) := "" if regex.match(`[\p{L}"″°%]`, figure.text)
