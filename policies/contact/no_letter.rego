# METADATA
# title: Bead at a sheet without the letter that the notes ask
# description: |
#   The notes list the pairs for which letters of both makers are at hand and let nothing else meet, and a row seals a
#   listed sheet with a listed sealant that are no pair of the list. What was never tried together may slide, stain or
#   let go, and after two years each maker points at the other. It does not apply to what the list does not name at
#   all, nor to what a remark alone tells; a harm that is known is told by its own rule.
# custom:
#   id: contact-letter-missing
#   topic: contact
#   severity: warning
#   reason: The project asks for a letter for each pair that meets, and has none for these two.
#   remedy: Use a sealant of the list for that sheet, or get the letter of both makers before the work.
#   source: the project's notes
#   basis: source-read
#   example: "notes: letters on file: SE-1 with FM-1, SE-2 with FM-2; no letter, no contact; row: FM-1 sealed with SE-2"
package contact.no_letter

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("no_letter")

_message(contact) := sprintf("%s meets %s, and the letters that the notes list do not name the two together", [
	naming.plain(contact.a),
	naming.plain(contact.b),
])
