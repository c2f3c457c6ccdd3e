# METADATA
# title: Wet cement against aluminum, lead or coated steel
# description: |
#   Fresh mortar is as alkaline as lye. It etches bare aluminum within hours, eats lead until it has cured and
#   dried, and dissolves aluminum-zinc coating; after two years an unpainted sill set in mortar is white, pitted
#   and thin. Coat the metal, or keep it out of the mortar until the mortar is dry. It does not apply to copper
#   and stainless, which do not mind, nor to plain galvanizing, which is only marked, nor to concrete that is
#   cured and dry.
# custom:
#   id: contact-wet-cement-on-metal
#   topic: contact
#   severity: error
#   reason: The lime of wet mortar, stucco or concrete attacks aluminum, lead and aluminum-zinc coating.
#   remedy: Coat the metal with bituminous paint or a tape where it is bedded, or use stainless or copper.
#   source: federal guide specification and aluminum design manual on contact with masonry
#   basis: source-read
#   example: "material: mill aluminum flashing; touches: fresh mortar above and below"
package contact.alkali

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("alkali")

_message(contact) := hit.touch(contact, naming.plain(ends.other), naming.plain(ends.one)) if {
	ends := hit.ends(contact, ["uncured-cement", "alkaline-when-wet", "alkaline-cleaner"])
}
