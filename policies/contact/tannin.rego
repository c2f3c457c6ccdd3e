# METADATA
# title: Cedar, oak or redwood against metal
# description: |
#   These woods are acid. Plain and plated steel in them bleeds blue-black within weeks, and zinc wastes away;
#   after two years there is a black streak below each nail. Keep zinc panels off cedar, and fix cedar with
#   stainless. It does not apply to stainless and aluminum, which stand it, nor to woods without such acid.
# custom:
#   id: contact-acid-wood
#   topic: contact
#   severity: error
#   reason: Acid and tannin of the wood react with iron and zinc; the metal corrodes and the wood stains.
#   remedy: Use stainless fasteners and flashings, or part them with a felt or a self-adhered strip.
#   source: cedar industry advice on fasteners; wood handbook
#   basis: source-read
#   example: "material: western red cedar siding; touches: electroplated nails"
package contact.tannin

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("tannin")

_message(contact) := hit.touch(contact, naming.plain(ends.other), naming.noun(ends.one, "tannin")) if {
	ends := hit.ends(contact, ["tannin-bearing"])
}
