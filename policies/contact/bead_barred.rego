# METADATA
# title: Bead that the notes do not let on the sheet
# description: |
#   The notes name the beads that a kind of sheet takes, or those that it does not take, or let only those meet a
#   sheet that its data lists, or the data of the sheet itself names the only bead, and the row sets another at it.
#   Oils of the one make the other slide or stain within two years, and neither maker answers for a pair that was left
#   out on purpose. It does not apply to a bead that the data of the sheet allows by name, to what a remark alone
#   tells, nor to notes that speak of a season or of letters; a harm that is known is told by its own rule.
# custom:
#   id: contact-bead-barred
#   topic: contact
#   severity: warning
#   reason: The project or the maker names the beads for such sheets, and this one is not among them.
#   remedy: Use a bead that the notes name for the sheet, or have the notes changed with the makers' answer.
#   source: the project's notes, or the product's data in this workbook
#   basis: source-read
#   example: "notes: asphaltic sheets: SE-3 only; row: asphaltic sheet, edge bead SE-2"
package contact.bead_barred

import data.lib.finding
import data.lib.hit
import data.lib.named_beads
import data.lib.naming
import data.lib.told
import data.lib.words

findings contains found if {
	some v in told.under("bead_barred")
	note := named_beads.note(v.contact)
	message := sprintf("%s meets %s, and %s %s", [
		naming.plain(v.contact.a),
		naming.plain(v.contact.b),
		object.get(note, "by", "the notes say"),
		words.quoted(note.text),
	])
	one := hit.tell(v, message)
	related := array.concat(object.get(one, "related", []), [finding.related_address(note.at, note.text)])
	found := object.union(one, {"related": related})
}
