# METADATA
# title: Run-off that harms what lies below
# description: |
#   No contact is needed. Rain takes copper off a coping and plates it out on the aluminum or zinc below, which is
#   pitted along the drip line by its second year. Cedar wash thins copper, lime wash marks glass and metal. A
#   gutter, a drip or a diverter helps; a tape between the two does nothing. It does not apply the other way
#   round (aluminum above copper is fine), nor where the row says that the water is caught or led away.
# custom:
#   id: contact-run-off
#   topic: contact
#   severity: error
#   reason: Water carries ions, acid or lime from the upper material onto the lower one and attacks it.
#   remedy: Catch or throw the water clear with a gutter, drip or diverter, or make both of one material.
#   source: federal guide specification on drainage from copper; copper association
#   basis: source-read
#   example: "material: copper coping; touches: drains onto aluminum panels below"
package contact.runoff

import data.lib.facts
import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if {
	some v in told.under("runoff")
	not _is_caught(v.contact)
	_is_said(v)
}

# A gutter, pipe or diverter told in the same words takes the water elsewhere.
# The gutter that it runs into is none.
_is_caught(contact) if {
	clause := replace(lower(contact.clause), lower(contact.b.text), "")
	regex.match(data.contact.runoff_words.caught, clause)
}

# A remark may say so of the same material: "gutter above", "rain off the gutter is led away in pipe".
_is_caught(contact) if {
	some item in facts.lines_by_id[contact.line].items
	item.slot == "remark"
	item.family == contact.a.family
	item.family != ""
	regex.match(data.contact.runoff_words.caught, lower(item.clause))
}

# "above" alone says where a thing stands, not that water falls on the other: enough for a harm, not for a question.
_is_said(v) if v.outcome == "harm"

_is_said(v) if not _is_position(v.contact)

_is_position(contact) if not regex.match(data.contact.runoff_words.drains, lower(contact.clause))

_message(contact) := sprintf("water off %s runs onto %s, and nothing shown catches it", [
	naming.plain(contact.a),
	naming.plain(contact.b),
])
