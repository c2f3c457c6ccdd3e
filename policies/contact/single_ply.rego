# METADATA
# title: Asphalt or tar on a single-ply roof sheet
# description: |
#   At a parapet the wall sheet meets the roof sheet. TPO and vinyl alloys bear aged asphalt unevenly, and fresh
#   cutback cement not at all: after two years the roof sheet is stained and swollen and will not weld again.
#   Makers ask for a listed transition strip or a metal edge. It does not apply to soft PVC, which has a rule of
#   its own, nor to sheets that a strip parts.
# custom:
#   id: contact-asphalt-on-single-ply
#   topic: contact
#   severity: warning
#   reason: Oils and solvent of asphalt and tar swell or stain single-ply roof sheets, and the lap seldom bonds.
#   remedy: Show the roof maker's transition strip, or a separator, where the wall sheet meets the roof sheet.
#   source: common practice; trade sources disagree on aged asphalt
#   basis: common-practice
#   example: "material: TPO roof membrane; touches: asphalt roof cement"
package contact.single_ply

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("single_ply")

_message(contact) := hit.touch(contact, naming.plain(ends.other), naming.noun(ends.one, "single-ply")) if {
	ends := hit.ends(contact, ["tpo", "kee-alloy"])
}
