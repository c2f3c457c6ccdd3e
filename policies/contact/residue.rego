# METADATA
# title: Sealant or coating over oil or wax
# description: |
#   Form oil and curing wax are bond breakers by design. A bead run on a waxed joint face peels in one piece in
#   its first winter, and by the second the joint is open along its length. Grind or clean the face and try a
#   short length first. It does not apply to what lies under a self-adhered sheet, which is judged with its
#   substrate; this is the bead, the paint, the tape.
# custom:
#   id: contact-oil-or-wax
#   topic: contact
#   severity: error
#   reason: Oil or wax left on a face keeps sealant, tape and coating from bonding.
#   remedy: Grind or wash the face clean and test the bond, or cure with water or sheet.
#   source: federal guide specification for sheet waterproofing; common practice
#   basis: source-read
#   example: "sealant: polyurethane; touches: joint faces with form-release oil"
package contact.residue

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("residue")

_message(contact) := sprintf("%s goes on %s, and nothing says that it comes off first", [
	naming.plain(ends.other),
	naming.noun(ends.one, "residue"),
]) if {
	ends := hit.ends(contact, ["oil-or-wax-residue"])
}
