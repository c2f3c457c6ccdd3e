# METADATA
# title: Dusty face
# description: |
#   Dust is the usual failure plane on block and sawn concrete: within two years the sheet comes off with a gray
#   back. A primer binds a little of it, a brush takes it off. It does not apply where a primer is missing anyway, since
#   that finding tells it, nor to primed faces of which the row does not say that the dirt is thick or stayed on.
# custom:
#   id: pairing-dusty-face
#   topic: pairing
#   severity: warning
#   reason: The adhesive holds the dust and not the wall.
#   remedy: Brush and blow the face clean, and prime it if the maker lists a primer.
#   source: common practice
#   basis: common-practice
#   example: "acrylic sheet on concrete, dusty; primer: none"
package pairing.dusty

import data.lib.face
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet

findings contains finding.at(line, ["material", "substrate", "primer"], _message(line, stuck.item, told)) if {
	some stuck in sheet.stuck
	line := stuck.line
	primer.state(line) in {"none", "blank"}
	not primer.lacks(line)
	told := face.told(line, "dusty")[0]
}

# A primer holds to what lies on the wall, and the row says that nobody took that off.
findings contains finding.at(line, ["material", "tag", told.slot], message) if {
	some stuck in sheet.stuck
	line := stuck.line
	primer.state(line) == "named"
	facts.said(line, "dirt_stays")
	not facts.said(line, "clean")
	told := face.told(line, "dusty")[0]
	message := naming.say("%s and its primer go on a face that is not clean (%s)", [
		naming.plain(stuck.item),
		face.quote(line, told),
	])
}

_message(line, item, told) := naming.say("%s goes on a face that is not clean (%s), without primer", [
	naming.plain(item),
	face.quote(line, told),
])
