# METADATA
# title: Solvent-borne primer, fire and fumes
# description: |
#   Told once for the schedule: at a row that puts one into a heated shelter if there is one, since a heater and solvent
#   vapor in one tent is how fires start, else at the first row that uses one.
# custom:
#   id: safety-solvent-vapor
#   topic: safety
#   severity: note
#   reason: Its vapor burns, is heavier than air, and gathers in tents, shafts and closed rooms.
#   remedy: Ventilate, keep heaters and torches away, and follow the maker's safety sheet.
#   source: common practice; the maker's safety data sheet governs
#   basis: common-practice
#   example: "solvent-borne primer P-1 in a heated tent"
package safety.solvent_vapor

import data.lib.facts
import data.lib.finding
import data.lib.primer

findings contains finding.at(use.line, [use.item.at.cell], _message(use)) if {
	use := array.concat([one | some one in _uses; one.heated], _uses)[0]
}

_uses := [{"line": line, "item": item, "heated": _is_heated(line)} |
	some line in facts.live_lines
	some item in line.items
	facts.is_there(item)
	item.class == "primer"
	primer.carrier(item) == "solvent"
]

_message(use) := sprintf("%s is solvent-borne and its vapor burns%s; ventilate, no open flame", [
	use.item.text,
	_place(use),
])

_place(use) := ", and this row is heated or enclosed" if {
	use.heated
} else := " and gathers in closed places"

default _is_heated(_) := false

_is_heated(line) if facts.said(line, "heated")
