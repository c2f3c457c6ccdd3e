# METADATA
# title: EPDM against asphalt, oil or tar
# description: |
#   EPDM is compounded with oil and drinks more of it. On a rubberized asphalt sheet the oils trade places: the
#   gasket swells and creeps, the adhesive under it goes soft and lets go, and the boot that sealed on day one
#   leaks in its second year. A butyl strip or a metal flange between them is the cure. It does not apply to EPDM
#   on a butyl sheet, which bears it well, nor to a gasket in a glass pocket that never meets the sheet.
# custom:
#   id: contact-epdm-on-asphalt
#   topic: contact
#   severity: error
#   reason: Oils pass between EPDM and asphalt; the rubber swells and the adhesive softens.
#   remedy: Use a silicone gasket, or a butyl sheet under the EPDM, or sheet metal between the two.
#   source: makers' printed keep-away lists for asphaltic sheets; common practice
#   basis: common-practice
#   example: "material: SBS self-adhered sheet; touches: EPDM boot clamped to the sheet"
package contact.epdm

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("epdm")

_message(contact) := hit.touch(contact, naming.noun(ends.one, "epdm"), _other(ends.other)) if {
	ends := hit.ends(contact, ["epdm"])
}

_other(end) := naming.noun(end, "asphaltic") if {
	"asphaltic" in end.keys
} else := naming.plain(end)
