# METADATA
# title: Resistance that the board's thickness does not give
# description: |
#   A row tells how thick a board is and what it resists, and the product data tells the resistance of an inch: the
#   product of the two is another figure. Mostly the thickness was cut and the figure stayed, or that of a thicker board
#   was copied, and the energy sheet counts on it. It does not apply where the cell tells several boards or figures, nor
#   where the row's figure is within the rounding and aging that makers print.
# custom:
#   id: performance-insulation-figure
#   topic: performance
#   severity: warning
#   reason: The wall resists less, or more, than the figure that the energy sheet counts on.
#   remedy: Correct the figure, or put in the thickness that gives it.
#   source: the project's product data
#   basis: common-practice
#   example: "IW-2 2 in., R-12; the data of IW-2 has R-4.2 per in."
package performance.insulation_figure

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.ratio

findings contains found if {
	some line in facts.live_lines
	some item in facts.items_in(line, data.performance.insulation.slots)
	item.class == "insulation"
	item.polarity == "yes"
	clause := lower(item.clause)
	_is_of_one_board(line, item)
	thick := _thickness_in(clause)
	told := ratio.stated(clause)
	product := facts.product_of(item)
	given := (thick * _by_inch(product)) / data.vapor.ratio.r_si
	abs((told / given) - 1) > data.performance.insulation.share
	message := naming.say("%s is told to have %s; %s in. by its data has %s", [
		naming.plain(item),
		ratio.written(told, false),
		measure.number(thick),
		ratio.written(given, false),
	])
	found := finding.at_with(line, [item.at.cell], message, {})
}

_is_of_one_board(line, item) if {
	count([one | some one in line.items; one.clause == item.clause; one.at == item.at]) == 1
	not regex.match(data.performance.insulation.not, lower(item.clause))
	count(regex.find_n(data.performance.insulation.told, lower(item.clause), -1)) == 1
}

# The only figure in inches of the cell, with its fraction.
_thickness_in(text) := to_number(found[0][1]) + _fraction(found[0]) if {
	found := regex.find_all_string_submatch_n(data.performance.insulation.inches, text, -1)
	count(found) == 1
}

_fraction(found) := to_number(found[2]) / to_number(found[3]) if {
	found[2] != ""
} else := 0

_by_inch(product) := to_number(found[0][1]) if {
	text := concat("; ", [text | some slot in ["material", "type", "remark"]; text := lower(product.texts[slot])])
	found := regex.find_all_string_submatch_n(data.performance.insulation.by_inch, text, -1)
	count(found) == 1
}
