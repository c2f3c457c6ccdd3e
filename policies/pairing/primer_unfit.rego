# METADATA
# title: A primer that does not suit the face
# description: |
#   Water-borne primer beads on water-repellent block and flash-rusts bare steel; asphalt primer stays soft on
#   rigid vinyl. Either way the sheet holds on to the primer and the primer to nothing, and in two years both come
#   off together. A question, since products differ. It does not apply where the sheet's own data speaks of that
#   face, which is heard instead.
# custom:
#   id: pairing-primer-face
#   topic: pairing
#   severity: note
#   reason: The carrier of the primer does not wet that face, or harms it.
#   remedy: Ask the maker which primer it lists for that face, or test a patch.
#   source: from memory
#   basis: from-memory
#   example: "SBS sheet on block with integral water repellent, primer: water-borne PR-2"
package pairing.primer_unfit

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet
import data.lib.words

findings contains finding.at(line, ["primer", "substrate"], _message(beds[0], primers)) if {
	some line in sheet.lines
	primers := primer.named(line)
	count(primers) > 0
	beds := [bed |
		some bed in sheet.beds_of(line)
		not primer.has_data(bed.item)
		not facts.has_key(bed.under, ["polystyrene"])
		not regex.match(data.pairing.primer.coated, lower(bed.under.text))
		every p in primers { primer.suits_not(primer.carrier(p), bed) }
	]
	count(beds) > 0
}

_message(bed, primers) := naming.say("%s (%s-borne) on %s seldom suits that face: %s", [
	words.list([p.text | some p in primers]),
	primer.carrier(primers[0]),
	bed.under.text,
	naming.uncapped(trim_suffix(data.knowledge.substrates[bed.face].notes, ".")),
])
