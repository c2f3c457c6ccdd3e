# METADATA
# title: Face too rough for a sheet
# description: |
#   A sheet bridges split-face block and rubble and touches a third of it; water and air run behind the rest, and
#   in two years it has let go at the first cut edge. Such faces are parged first, or take a thick fluid. It does
#   not apply where the sheet's own data lists the face, which is believed.
# custom:
#   id: pairing-rough-face
#   topic: pairing
#   severity: warning
#   reason: The sheet bridges the hollows of the face and bonds only to its peaks.
#   remedy: Parge the face flush first, or use a thick fluid-applied membrane.
#   source: from memory
#   basis: from-memory
#   example: "SBS sheet on split-face block"
package pairing.parge_first

import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet

findings contains finding.at(line, ["material", "substrate"], _message(beds[0])) if {
	some line in sheet.lines
	beds := [bed |
		some bed in sheet.beds_of(line)
		primer.usual(bed) == "parge-first"
	]
	count(beds) > 0
}

_message(bed) := naming.say("%s goes straight on %s, which such a sheet bridges; no parging is shown", [
	naming.noun(bed.item, bed.chemistry),
	bed.under.text,
])
