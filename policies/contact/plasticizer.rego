# METADATA
# title: Soft vinyl against asphalt or polystyrene
# description: |
#   Soft PVC is a third oil. Where it lies on asphalt the oil moves over: the vinyl shrinks and goes brittle, the
#   asphalt turns to syrup and runs. After two summers a parapet lap is a black stain under a cracked roof sheet.
#   Polystyrene drinks the same oil and pits. A film, a metal strip or a butyl strip over the whole contact is the
#   cure, felt or rosin paper is none. It does not apply to rigid PVC (conduit, window flanges), which has no such
#   oil.
# custom:
#   id: contact-soft-vinyl
#   topic: contact
#   severity: error
#   reason: Plasticizer moves out of soft PVC into asphalt or foam; the vinyl hardens and shrinks, the other softens.
#   remedy: Part them over the full width with polyethylene film, sheet metal or a butyl strip, or change one material.
#   source: roofing and flashing trade notes on PVC beside asphalt; common practice
#   basis: common-practice
#   example: "material: SBS self-adhered sheet; touches: PVC roof membrane turned up on it"
package contact.plasticizer

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("plasticizer")

_message(contact) := hit.touch(contact, naming.noun(ends.one, "plasticized"), _other(ends.other)) if {
	ends := hit.ends(contact, ["pvc-plasticized"])
}

_other(end) := naming.noun(end, "asphaltic") if {
	"asphaltic" in end.keys
} else := naming.plain(end)
