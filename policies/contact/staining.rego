# METADATA
# title: A neighbor that stains
# description: |
#   Oil of a caulk, a filler strip or a bitumen edge wanders into stone, brick, paint or a light bead and shows
#   within a year or two as a dark halo that no cleaning takes out. The wall still works; the owner will not
#   accept it. Ask for a stain test (ASTM C1248) on the stone itself. It does not apply to pairs that the table
#   holds for fine, nor where a strip parts bead and stone.
# custom:
#   id: contact-stain
#   topic: contact
#   severity: warning
#   reason: Oil or fluid of one material moves into the face of the other and discolors it.
#   remedy: Ask for a stain test on the very stone or finish, or change the material.
#   source: stain test standard for sealants on stone; common practice
#   basis: common-practice
#   example: "sealant: oil-based caulk; touches: limestone"
package contact.staining

import data.lib.facts
import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("staining")

_message(contact) := sprintf("%s goes on %s, and the row says that it was not tried", [
	naming.plain(contact.a),
	naming.plain(contact.b),
]) if {
	facts.said(facts.lines_by_id[contact.line], "not_tried")
} else := hit.touch(contact, naming.plain(contact.a), naming.plain(contact.b))
