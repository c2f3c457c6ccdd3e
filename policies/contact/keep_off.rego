# METADATA
# title: The product's own data says to keep off
# description: |
#   The data sheet names the neighbor among what it must not touch, and the row lets them touch. No chemistry is
#   needed: the warranty ends there, and after two years nobody pays for what has gone soft, stained or let go.
#   Part the two, or get the maker's letter for this pair. It does not apply where the chemistry is known as well,
#   since the rule of that mechanism tells it then.
# custom:
#   id: contact-own-data-bars
#   topic: contact
#   severity: error
#   reason: The maker of one of the two names the other among what it must be kept away from.
#   remedy: Part the two, change one, or get the maker's letter for this pair and name it in the row.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "sealant: S-3, whose data says to keep off FM sheets; material: FM-1"
package contact.keep_off

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("keep_off")

_message(contact) := hit.touch(contact, naming.plain(contact.a), naming.plain(contact.b))
