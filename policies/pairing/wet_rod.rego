# METADATA
# title: Open-cell rod where it stays wet
# description: |
#   A rod with open cells takes up the water of the ground, the deck or the tank and holds it against the back of the
#   bead: the bond goes first, and frost breaks what is left. It does not apply above ground, where an open-cell rod
#   lets a one-part sealant cure from behind, nor to closed-cell rod.
# custom:
#   id: pairing-wet-rod
#   topic: pairing
#   severity: warning
#   reason: An open-cell rod drinks water and feeds it to the back of the bead.
#   remedy: Use closed-cell rod, or bond breaker tape on a firm back.
#   source: ASTM C1193 on joint backing (from memory); common practice
#   basis: common-practice
#   example: "foundation joint below grade, open-cell rod"
package pairing.wet_rod

import data.lib.facts
import data.lib.finding
import data.lib.naming

findings contains finding.at(line, ["material", "tag", rod.slot], message) if {
	some line in facts.live_lines
	line.role == "sealant"
	rod := [item |
		some item in line.items
		facts.is_there(item)
		facts.has_key(item, data.pairing.wet_rod.drinks.keys)
	][0]
	_stays_wet(line)
	message := naming.say("%s is backed by %s where it stays wet, and an open-cell rod drinks water", [
		naming.plain(facts.main_items(line)[0]),
		naming.plain(rod),
	])
}

_stays_wet(line) if facts.said(line, "below_grade")

_stays_wet(line) if {
	some slot in data.pairing.wet_rod.slots
	regex.match(data.pairing.wet_rod.drinks.places, lower(object.get(line.texts, slot, "")))
}
