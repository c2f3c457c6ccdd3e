# METADATA
# title: Creosoted wood against asphalt, rubber or foam
# description: |
#   Old ties and timbers sweat creosote for decades, most on a hot day. The oil soaks into an asphaltic sheet,
#   softens it and carries it off: after two summers the sheet behind the tie is a brown smear. Part them with
#   metal or with a gap that stays open. It does not apply to ties that stand clear of the wall, with soil or air
#   between.
# custom:
#   id: contact-creosote
#   topic: contact
#   severity: error
#   reason: Creosote oil soaks into asphalt, butyl, rubber and foam, softens or dissolves them.
#   remedy: Move the timber away, use another treatment, or part them by sheet metal or a drained gap.
#   source: makers' printed keep-away lists for asphaltic sheets; common practice
#   basis: common-practice
#   example: "material: SBS self-adhered sheet; touches: creosoted crib timbers hard against it"
package contact.creosote

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("creosote")

_message(contact) := hit.touch(contact, naming.noun(ends.one, "creosote"), _other(ends.other)) if {
	ends := hit.ends(contact, ["creosote"])
}

_other(end) := naming.noun(end, "asphaltic") if {
	"asphaltic" in end.keys
} else := naming.plain(end)
