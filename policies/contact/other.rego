# METADATA
# title: Other neighbors that do not get along
# description: |
#   What the table of pairs knows and no rule of its own tells: salt on metal, cleaners, boards with chloride,
#   felt as a flashing. The reason in the finding is that of the pair; what it looks like after two years follows
#   from it: rust behind a chloride board, etched glass below a cleaner, felt that has rotted in its groove. It
#   does not apply to pairs that the table calls fine, nor to pairs that it does not know.
# custom:
#   id: contact-other
#   topic: contact
#   severity: warning
#   reason: One of the two harms the other by a known mechanism.
#   remedy: Part them, or change one.
#   source: common practice
#   basis: common-practice
#   example: "material: galvanized track; touches: magnesium oxide board"
package contact.other

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains object.union(hit.tell(v, _message(v)), {"reason": v.row.condition}) if some v in told.under("other")

_message(v) := sprintf("%s: %s", [
	hit.touch(v.contact, naming.plain(v.contact.a), naming.plain(v.contact.b)),
	hit.why(v.row),
])
