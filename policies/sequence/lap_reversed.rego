# METADATA
# title: Lap against the water
# description: |
#   The upper sheet is behind the lower one: water that runs down the wall is led behind the flashing instead of
#   over it, and the sheathing there is soft in two years. A sheet stuck all over a reversed lap is still a
#   reversed lap. It does not apply where the same cell also tells of a bar, a bead or a lap from above and no
#   edge of the row is open; look whether that closes the very lap in question.
# custom:
#   id: sequence-lap-reversed
#   topic: sequence
#   severity: error
#   reason: Water running down the upper sheet is led behind the lower one.
#   remedy: Lap the upper sheet over the lower, or close the top of the lower with bar, bead and a strip over both.
#   source: residential code, lapping of water-resistive barriers and flashings (upper over lower)
#   basis: source-read
#   example: "Wall sheet above is tucked behind the upper leg of the head flashing"
package sequence.lap_reversed

import data.lib.closing
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", told.slot, told.at.cell], message) if {
	some line in facts.live_lines
	_laps(line)
	told := closing.reversed(line)[0]
	item := facts.main_items(line)[0]
	message := naming.say("the lap at %s runs against the water (%s)%s", [
		naming.plain(item),
		words.quoted(told.text),
		_open(line),
	])
}

_laps(line) if line.role in data.pairing.chemistry.roles

_laps(line) if line.role in data.sequence.order.metal_roles

_open(line) := ", and its edge is open" if {
	count(closing.open(line)) > 0
} else := ""
