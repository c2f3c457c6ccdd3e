# METADATA
# title: Sheet before the layer under it
# description: |
#   In a schedule by layers the sheet has an earlier date than the sheathing or wall that it is stuck to. Nobody
#   can build in that order, so the site moves one of the two, often into another season or onto another face; two
#   years later nobody knows which face the sheet is on. The layer is known as the one under the sheet by the
#   row's substrate, one or two numbers away in the same assembly. It does not apply where the dates overlap, nor
#   where no layer that near is of the row's substrate.
# custom:
#   id: sequence-bed-later
#   topic: sequence
#   severity: error
#   reason: A sheet cannot be stuck to a layer that comes later.
#   remedy: Ask for the right dates of both layers.
#   source: the schedule itself
#   basis: source-read
#   example: "Layer 3, sheet: 5 Mar; layer 2, sheathing under it: 12 Mar"
package sequence.bed_later

import data.lib.facts
import data.lib.finding
import data.lib.layers
import data.lib.naming
import data.lib.words

findings contains found if {
	some layer in layers.sheets
	line := layer.line
	bed := _later(layer)[0].line
	item := facts.main_items(line)[0]
	message := naming.say("%s goes on %s, before the %s under it (layer %s, %s)", [
		naming.plain(item),
		words.date_range(line.dates.install.from, line.dates.install.to),
		facts.main_items(bed)[0].text,
		bed.order,
		words.date_range(bed.dates.install.from, bed.dates.install.to),
	])
	related := [finding.related(bed, ["install"], "the layer under it")]
	found := finding.at_with(line, ["install"], message, {"related": related})
}

_later(layer) := [bed |
	some bed in layers.near(layer, data.sequence.order.bed_roles, data.sequence.order.reach)
	bed.line.dates.install.from > layer.line.dates.install.to
	_is_under(layer.line, bed.line)
]

_is_under(line, bed) if {
	some under in facts.items_in(line, ["substrate"])
	some item in facts.main_items(bed)
	under.family != ""
	under.family == item.family
}

_is_under(line, bed) if {
	some under in facts.items_in(line, ["substrate"])
	some item in facts.main_items(bed)
	under.tag != ""
	under.tag == item.tag
}
