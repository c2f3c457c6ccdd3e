# METADATA
# title: Face too rough for a sheet
# description: |
#   A sheet bridges split-face block and rubble and touches a third of it; water and air run behind the rest, and
#   in two years it has let go at the first cut edge. Such faces are parged first, or take a thick fluid. It does
#   not apply where the sheet's own data lists the face, which is believed. Block whose joints are raked or left open is
#   such a face too, for a sheet and for a fluid, where the notes ask for joints that are flush; not where the row says
#   that they are filled or parged.
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

import data.lib.facts
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

findings contains found if {
	some line in sheet.lines
	under := [item | some item in facts.items_in(line, ["substrate"]); item.class in data.pairing.rough.classes]
	count(under) > 0
	own := concat("; ", [object.get(line.texts, slot, "") | some slot in data.pairing.rough.slots])
	said := _open_joints(own)
	note := [one | some one in input.project.notes; regex.match(data.pairing.rough.asked, lower(one.text))][0]
	message := naming.say("%s goes on joints that are not flush (%q); the notes ask for flush ones", [
		naming.plain(facts.main_items(line)[0]),
		said,
	])
	found := finding.at_with(line, ["material", under[0].at.cell], message, {
		"severity": "error",
		"related": [finding.related_address(note.at, note.text)],
	})
}

# _open_joints is what the row says of joints that are raked, and not filled since.
_open_joints(own) := said if {
	said := regex.find_n(data.pairing.rough.open, own, 1)[0]
	rest := regex.replace(lower(own), data.pairing.rough.not_yet, "")
	not regex.match(data.pairing.rough.filled, rest)
}

_message(bed) := naming.say("%s goes straight on %s, which such a sheet bridges; no parging is shown", [
	naming.noun(bed.item, bed.chemistry),
	bed.under.text,
])
