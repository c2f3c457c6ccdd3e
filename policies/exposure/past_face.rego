# METADATA
# title: Sheet run out past the face
# description: |
#   A flexible flashing that is its own drip looks neat on the day. By the second summer the film has gone, the
#   compound hangs in strings and stains the brick. A metal edge carries the water out, and the sheet stops behind
#   the face in a bed of sealant. It does not apply to a metal or foil face that its data allows in daylight,
#   which may run out.
# custom:
#   id: exposure-past-face
#   topic: exposure
#   severity: error
#   reason: The edge stays in daylight for good, and the film and the compound under it are not made for that.
#   remedy: Set the sheet back behind the face on a metal drip edge, or take a sheet whose data lets it stay in view.
#   source: masonry articles and handbook (asphalt may not end in daylight); else the product's data
#   basis: source-read
#   example: "Sheet runs 1/4 in past the brick face as the drip, no metal edge"
package exposure.past_face

import data.lib.daylight
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in daylight.past_face
	shy := daylight.shy(line)
	said := _said(line)
	message := naming.say("%s runs past the face and stays in daylight (%s); %s, and no metal edge is shown", [
		naming.plain(shy.item),
		words.quoted(said.text),
		shy.why,
	])
	found := finding.at_with(line, ["material", "tag", said.slot, said.at.cell], message, {
		"severity": shy.level,
		"related": [finding.related_product(by, ["exposure_days"], shy.why) | some by in shy.by],
	})
}

# The fullest words are told: "past brick face" rather than "as the drip".
_said(line) := [s | some s in told; count(s.text) == most][0] if {
	told := [s | some s in line.signals; s.id == "runs_past_face"; not s.no]
	most := max([count(s.text) | some s in told])
}
