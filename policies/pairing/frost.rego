# METADATA
# title: Sheet on frost or ice
# description: |
#   Frost in a mortar joint is water by noon. Primer and adhesive bridge it, and the sheet lets go with the thaw;
#   by the second winter water freezes behind it and lifts it off. Warm and dry the face, and feel it by hand
#   before priming. It does not apply to a face that is said to be frost-free, or whose frost is taken off and the
#   face dried.
# custom:
#   id: pairing-frost
#   topic: pairing
#   severity: error
#   reason: Ice between sheet and wall is no bond, and it thaws.
#   remedy: Warm and dry the face before priming, and check it by touch and thermometer.
#   source: federal guide specification for sheet waterproofing on ice and frost
#   basis: source-read
#   example: "SBS sheet on block; substrate: rime still in the joints"
package pairing.frost

import data.lib.face
import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains finding.at(line, ["material", "substrate"], _message(line, stuck.item, told)) if {
	some stuck in sheet.stuck
	line := stuck.line
	told := face.told(line, "frost")[0]
	told.here
	regex.match(data.pairing.surface.ice, lower(told.text))
}

_message(line, item, told) := naming.say("%s goes on a face with frost (%s)", [
	naming.plain(item),
	face.quote(line, told),
])
