# METADATA
# title: Vapor profile not computed
# description: |
#   The order of barriers was still looked at. Nothing is guessed of the layer that is not known.
# custom:
#   id: vapor-not-computed
#   topic: vapor
#   severity: note
#   reason: A layer of the section is not known, so winter water could not be computed.
#   remedy: State the thickness or the permeance of that layer in the schedule or the product data.
#   source: ISO 13788 needs every layer
#   basis: common-practice
#   example: "the thickness of the insulation in W3 is not known"
package vapor.not_computed

import data.lib.facts
import data.lib.finding
import data.lib.words

findings contains finding.at(line, ["material", "tag"], message) if {
	some profile in input.profiles
	count(profile.missing) > 0
	_has_sheet(profile)
	line := [line | some id in profile.lines; line := facts.lines_by_id[id]; not line.struck][0]
	message := sprintf("the vapor profile of %s was not computed: %s", [profile.mark, words.list(profile.missing)])
}

# Without a sheet and insulation there is nothing to compute.
_has_sheet(profile) if {
	some sheet in profile.layers
	sheet.class in data.vapor.barriers.sheet_classes
	some board in profile.layers
	board.insulates
}
