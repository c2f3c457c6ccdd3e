# METADATA
# title: Cladding before the sheet behind it
# description: |
#   In a schedule by layers the cladding is up before the sheet that it covers. Either a date is wrong, or the
#   sheet is slipped in behind and never rolled, and after two years it hangs in the cavity. Told where the sheet
#   lies between a wall or sheathing and the cladding of the same assembly. It does not apply to a sheet on the
#   room side, which may well come last.
# custom:
#   id: sequence-cladding-first
#   topic: sequence
#   severity: warning
#   reason: Behind finished cladding no sheet can be placed; one of the dates is wrong.
#   remedy: Ask for the right dates of both layers.
#   source: the schedule itself
#   basis: source-read
#   example: "Layer 3, sheet: 4 May; layer 6, brick: 13 Apr"
package sequence.cladding_first

import data.lib.facts
import data.lib.finding
import data.lib.layers
import data.lib.naming
import data.lib.words

findings contains found if {
	some layer in layers.sheets
	line := layer.line
	cover := _earlier(layer)[0].line
	item := facts.main_items(line)[0]
	message := naming.say("%s goes on %s, after the cladding over it (layer %s, %s)", [
		naming.plain(item),
		words.date_range(line.dates.install.from, line.dates.install.to),
		cover.order,
		words.date_range(cover.dates.install.from, cover.dates.install.to),
	])
	related := [finding.related(cover, ["install"], "the cladding over it")]
	found := finding.at_with(line, ["install"], message, {"related": related})
}

_earlier(layer) := [cover |
	some cover in layers.beside(layer, data.sequence.order.cover_roles)
	cover.line.dates.install.to < layer.line.dates.install.from
	some bed in layers.beside(layer, data.sequence.order.bed_roles)
	_is_between(bed.order, layer.order, cover.order)
]

_is_between(a, b, c) if {
	a < b
	b < c
}

_is_between(a, b, c) if {
	a > b
	b > c
}
