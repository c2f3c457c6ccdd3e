# METADATA
# title: Solvent-borne primer, fire and fumes
# description: |
#   Solvent vapor is heavier than air, gathers in tents, shafts and pits, and burns back from a heater to the open
#   pail; breathed for a shift it makes people dizzy first. Told once for the schedule: at a row that puts a
#   solvent-borne primer into a heated shelter if there is one, since a heater and solvent vapor in one tent is
#   how fires start, else at the first row that uses one. Solvent-borne sealants and adhesives want the same care
#   and are not looked at. It does not apply to water-borne products, whose safety sheets still govern.
# custom:
#   id: safety-solvent-vapor
#   topic: safety
#   severity: note
#   reason: Its vapor burns, is heavier than air, and gathers in tents, shafts and closed rooms.
#   remedy: Ventilate, keep heaters and torches away, and follow the maker's safety sheet.
#   source: common practice; the maker's safety data sheet governs
#   basis: common-practice
#   example: "solvent-borne primer P-1 in a heated tent"
#   looks: across rows
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
	item.class == "primer"
	facts.is_there(item)
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
