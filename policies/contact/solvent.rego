# METADATA
# title: Solvent against asphalt, butyl, rubber or clear plastic
# description: |
#   The solvent of a gun-grade butyl, an acoustical caulk or a cutback mastic is just what dissolves rubberized
#   asphalt. A bead along the sheet's edge eats it back to the film; within two years the edge is open while the
#   bead still looks sound. Solvent also swells EPDM and crazes polycarbonate, and it passes through a film. Use a
#   solvent-free bead that the sheet's maker lists. It does not apply to a solvent-borne primer, which is made for
#   the sheet and dries before it goes on, nor to a bead between two metals away from the sheet.
# custom:
#   id: contact-solvent
#   topic: contact
#   severity: error
#   reason: Solvent of the fresh bead or mastic dissolves or swells what it touches.
#   remedy: Use a solvent-free sealant that the sheet's maker lists (silyl-terminated, or a listed silicone).
#   source: makers' printed keep-away lists for asphaltic sheets; common practice
#   basis: common-practice
#   example: "material: SBS self-adhered sheet; sealant: solvent-release butyl along its top edge"
package contact.solvent

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("solvent")

_message(contact) := hit.touch(contact, naming.noun(ends.one, "solvent"), _other(ends.other)) if {
	ends := hit.ends(contact, ["solvent-borne", "asphalt-cutback"])
}

_other(end) := naming.noun(end, "asphaltic") if {
	"asphaltic" in end.keys
} else := naming.plain(end)
