# METADATA
# title: Bead straight on a sheet without a word of a letter
# description: |
#   Silicone lets go of the polyethylene face of an asphaltic sheet and browns at its cut edge. Some makers list
#   one that lasts, and their letter says so. It does not apply where the row tells of a letter or a test, where the
#   product data takes the bead, nor in a joint of metal to metal away from the sheet.
# custom:
#   id: contact-letter-asked
#   topic: contact
#   severity: warning
#   reason: The bead may not hold on that sheet, or one may soften or stain the other.
#   remedy: Use the sealant that the sheet's maker lists, or get his letter or a test of the two before the work.
#   source: UFGS 07 92 00, designer note on sealants beside bituminous membranes; ASTM C1087; common practice
#   basis: source-read
#   example: "material: SBS sheet; sealant: neutral-cure silicone on the cut edge"
package contact.letter_asked

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.noted(v, hit.tell(v, _message(v.contact))) if some v in told.under("letter_asked")

_message(contact) := sprintf("%s is sealed to %s, and no letter or test of the two is told", [
	naming.plain(ends.bead),
	naming.plain(ends.sheet),
]) if {
	ends := _ends(contact)
}

_ends(contact) := {"bead": contact.b, "sheet": contact.a} if {
	contact.b.class in data.contact.judging.letter_asked.beads
} else := {"bead": contact.a, "sheet": contact.b}
