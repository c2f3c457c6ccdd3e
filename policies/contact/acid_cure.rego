# METADATA
# title: Acid-cure silicone on metal, stone or cement
# description: |
#   The vinegar smell is acetic acid. Under the bead it grows green salts on copper and white ones on lead and
#   zinc, etches marble, and leaves a weak skin on concrete; within two years the bead peels off with that skin on
#   its back. It does not apply to glass and anodized aluminum, which are its home, nor to neutral-cure silicone.
# custom:
#   id: contact-acid-cure
#   topic: contact
#   severity: error
#   reason: Acetic acid of the curing silicone attacks copper, lead, zinc, carbonate stone and cement.
#   remedy: Use a neutral-cure silicone.
#   source: common practice
#   basis: common-practice
#   example: "sealant: acetoxy silicone; touches: marble sill"
package contact.acid_cure

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("acid_cure")

_message(contact) := hit.touch(contact, naming.noun(ends.one, "acid-silicone"), naming.plain(ends.other)) if {
	ends := hit.ends(contact, ["silicone-acetoxy"])
}
