# METADATA
# title: Copper-treated wood against metal
# description: |
#   Wood treated with copper (ACQ, copper azole, CCA) is a battery when damp. Bare aluminum pits through within a
#   few years, plated screws lose their zinc in one and are red by the second; coping cleats and door thresholds
#   go first. Stainless and heavy hot-dip zinc are the fasteners for it; a self-adhered strip over the whole face
#   parts flashing and wood. It does not apply to borate-treated wood, which has no copper.
# custom:
#   id: contact-copper-treated-wood
#   topic: contact
#   severity: error
#   reason: Copper out of the preservative corrodes aluminum, zinc and steel wherever the wood is damp.
#   remedy: Lay a self-adhered strip between metal and wood, use stainless fasteners, or use borate-treated wood if dry.
#   source: building code on fasteners in treated wood; treated-wood and galvanizers' associations
#   basis: source-read
#   example: "material: aluminum cleat; touches: copper-azole treated nailer, screwed direct"
package contact.preservative

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("preservative")

_message(contact) := hit.touch(contact, naming.plain(ends.other), naming.noun(ends.one, "treated-wood")) if {
	ends := hit.ends(contact, ["copper-preservative", "fire-retardant-salts", "oil-borne-preservative"])
}
