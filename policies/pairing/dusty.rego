# METADATA
# title: Dusty face, and no primer
# description: |
#   Dust is the usual failure plane on block and sawn concrete: within two years the sheet comes off with a gray
#   back. A primer binds it, a brush takes it off. It does not apply where a primer is missing anyway, since that
#   finding tells it; this one is for sheets that else need none.
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

_message(line, item, told) := naming.say("%s goes on a face that is not clean (%s), without primer", [
	naming.plain(item),
	face.quote(line, told),
])
