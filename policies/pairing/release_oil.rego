# METADATA
# title: Oil or wax on the face under a sheet
# description: |
#   Oil from the forms, or bond breaker on tilt-up panels, is on every cast face unless someone takes it off.
#   Water beads on it, and so does primer; the sheet peels as one piece, at the latest in its second summer.
#   Sprinkle the face: where water beads, it is not clean. Sheet metal comes from the mill with rolling oil, and
#   strand board has one side with wax, which do the same. It does not apply where the row says that the oil is cleaned
#   off, nor to wax under sheets that are only fastened.
# custom:
#   id: pairing-release-oil
#   topic: pairing
#   severity: warning
#   reason: Oil or wax on the face keeps primer and adhesive from it.
#   remedy: |
#     Wash the face (metal with the solvent that the maker names), test that water wets it or that the sheet holds, and
#     show it in the row; turn the rough side of a board out.
#   source: federal guide specification for sheet waterproofing on form oil; common practice on mill oil and wax
#   basis: source-read
#   example: "substrate: tilt-up panel, bond breaker not cleaned off; material: SBS sheet"
package pairing.release_oil

import data.lib.face
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.verdict

findings contains found if {
	some line in sheet.lines
	item := sheet.own(line)
	told := face.told(line, "release_oil")[0]
	not _is_told_as_contact(line)
	found := finding.at_with(line, ["material", "substrate"], _message(line, item, told), {
		"severity": {true: "error", false: "warning"}[told.stays],
		"related": [finding.related_address(told.at, told.text) | not told.here],
	})
}

findings contains finding.at_with(line, ["material", "tag", told.slot], message, {"severity": "warning"}) if {
	some stuck in sheet.stuck
	line := stuck.line
	told := face.told(line, "waxed_face")[0]
	not facts.said(line, "adhesion_tested")
	message := naming.say("%s is stuck to a waxed face (%s), on which little holds", [
		naming.plain(stuck.item),
		face.quote(line, told),
	])
}

# Where the oil is named as a material under the sheet, the contact is told.
_is_told_as_contact(line) if {
	some told in verdict.told
	told.contact.line == line.id
	some end in [told.contact.a, told.contact.b]
	end.slot == "substrate"
	"oil-or-wax-residue" in end.keys
}

_message(line, item, told) := naming.say("%s goes on an oily face (%s), and nothing says that the oil comes off", [
	naming.plain(item),
	face.quote(line, told),
])
