# METADATA
# title: Vapor-tight board where the notes ask for vapor-open
# description: |
#   The notes ask that all outside of the permeable sheet be vapor-open, most often because the room side is
#   closed. A foil-faced or otherwise tight board outside makes two barriers around the wall, and after two
#   winters the sheathing between them is wet. It does not apply to rows whose sheet is tight itself, nor to
#   boards behind the sheet.
# custom:
#   id: vapor-open-outside
#   topic: vapor
#   severity: error
#   reason: The tight layer outside closes the only way in which the wall dries.
#   remedy: Use the vapor-open material that the other rows have there.
#   source: the project's notes
#   basis: source-read
#   example: "foil-faced board outside the permeable sheet; the notes ask for vapor-open there"
package vapor.open_outside

import data.lib.facts
import data.lib.finding
import data.lib.inside
import data.lib.limits
import data.lib.vaporclass
import data.lib.words

findings contains finding.at_with(line, cells, message, {"related": [related]}) if {
	some limit in _asking
	related := finding.related_address(limit.at, limit.text)
	some line in facts.live_lines
	limits.in_scope(limit.scope, line)
	sheet := facts.main_items(line)[0]
	vaporclass.is_open(sheet)
	tight := inside.outboard(line)
	count(tight) > 0
	cells := array.concat(["material"], [item.at.cell | some item in tight])
	message := sprintf("%s outside of the vapor-open %s is vapor-tight; the notes ask for vapor-open there", [
		words.list([item.text | some item in tight]),
		sheet.text,
	])
}

_asking := array.concat(
	object.get(limits.by_kind, "vapor_open_outside", []),
	[limit |
		some limit in object.get(limits.by_kind, "vapor_ng", [])
		_asks_for_open(limit)
		regex.match(data.vapor.open.outside, lower(limit.text))
	],
)

_asks_for_open(limit) if {
	is_number(limit.min)
	limit.min >= data.vapor.classes.open_floor_ng
}

_asks_for_open(limit) if {
	limit.min == null
	limit.max == null
	regex.match(data.vapor.open.words, lower(limit.text))
}
