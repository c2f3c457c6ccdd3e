# METADATA
# title: A bond that will not last
# description: |
#   Little holds on silicone but silicone, little on polyethylene film but its own tape, and nothing on tarry
#   dust. The lap looks sealed until the first wind-driven rain; after two years the bead lies in its joint like a
#   loose string. Choose a sealant that is listed for that face, or put a strip between that both hold. It does
#   not apply to a backer rod, which is meant not to bond, nor to a gasket that is clamped.
# custom:
#   id: contact-no-bond
#   topic: contact
#   severity: error
#   reason: The adhesive or sealant does not wet or hold on that face.
#   remedy: Use what the face's maker lists (silicone on silicone, its own tape on film), or clamp it mechanically.
#   source: common practice
#   basis: common-practice
#   example: "sealant: polyurethane; touches: silicone-coated air barrier"
package contact.no_bond

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("no_bond")

_message(contact) := sprintf("%s does not hold on %s, which it is to be sealed to", [
	naming.plain(ends.one),
	naming.plain(ends.other),
]) if {
	ends := _bonding(contact)
}

# The bead, tape or sheet does the bonding; the other is what it should hold on.
_bonding(contact) := {"one": contact.b, "other": contact.a} if {
	contact.b.class in {"sealant", "tape", "mastic"}
	not contact.a.class in {"sealant", "tape", "mastic"}
} else := {"one": contact.b, "other": contact.a} if {
	"silicone" in contact.a.keys
	not "silicone" in contact.b.keys
} else := {"one": contact.a, "other": contact.b}
