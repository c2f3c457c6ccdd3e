# METADATA
# title: Sealant without the primer that its data asks for
# description: |
#   The data of the sealant lists a primer for the material of the joint, and the row says none. On concrete, stone
#   and brick the bead then holds dust and laitance, and water behind it lifts it off the face in a few winters. It
#   does not apply to faces that the data takes without primer, to data that names no primer, nor to backer rod and
#   tape behind the bead.
# custom:
#   id: pairing-primer-sealant
#   topic: pairing
#   severity: error
#   reason: Without its primer the bead holds to dust and laitance and not to the face of the joint.
#   remedy: Prime the faces with what the sealant's data lists, or show by a pull test on the job that none is needed.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "Urethane JS-1 on precast, primer: none; its data lists JP-1 there"
package pairing.primer_sealant

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	primer.state(line) == "none"
	item := _bead(line)
	beds := [bed |
		some face in facts.items_in(line, data.pairing.joint.slots)
		not face.class in data.pairing.joint.no_faces
		bed := {"item": item, "under": face}
		primer.asked(bed).primer == "listed"
	]
	count(beds) > 0
	faces := {bed.under.text | some bed in beds}
	message := naming.say("%s goes on %s without primer (%s), but its data asks for %s there", [
		naming.plain(item),
		words.list(sort(faces)),
		primer.cell(line),
		primer.choice(primer.asked(beds[0])),
	])
	found := finding.at_with(line, _cells(line), message, {
		"related": [finding.related_product(facts.product_of(item), ["primer", "accepts"], "its data on primers")],
		"facts": array.concat([item.id], [bed.under.id | some bed in beds]),
	})
}

_bead(line) := facts.main_items(line)[0] if line.role == "sealant"

# A schedule of joints leaves the cell of the sheet blank where the joint has a bead alone.
_bead(line) := beads[0] if {
	line.role != "sealant"
	count(facts.items_in(line, ["material", "tag"])) == 0
	beads := [item | some item in facts.items_in(line, ["sealant"]); item.class == "sealant"]
	count(beads) == 1
}

_cells(line) := ["material", "tag", "primer"] if line.role == "sealant"

_cells(line) := ["sealant", "primer"] if line.role != "sealant"
