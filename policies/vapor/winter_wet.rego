# METADATA
# title: Winter water that dries in summer
# description: |
#   The monthly sum of vapor diffusion shows water that gathers in winter and dries within the year. It matters
#   where the layer is wood or paper, or where so much gathers that it runs off: two such winters with a little air
#   leakage and the paper is spotted. Masonry and foam bear a good deal; the rule does not weigh that and leaves it
#   to the reader; more than a standard lets gather in one winter is a question. It does not apply to a few grams,
#   nor to sections whose order of barriers is wrong, which are told by that.
# custom:
#   id: vapor-winter-wet
#   topic: vapor
#   severity: note
#   reason: Vapor from the room condenses in the section in winter.
#   remedy: Check that the materials there bear it, and that air cannot leak to that place.
#   source: ISO 13788 (monthly sum; no air leakage, rain or storage)
#   basis: source-read
#   example: "at the sheathing of W4 up to 60 g/m² gather and dry"
package vapor.winter_wet

import data.lib.finding
import data.lib.gathered

findings contains finding.at_with(one.line, ["material", "tag"], message, {"severity": _severity(one)}) if {
	some one in gathered.all
	one.dries == true
	one.peak >= data.vapor.amounts.told_g_m2
	message := sprintf("%s: up to %d g/m² of water gather %s in winter and dry within the year%s", [
		one.name,
		round(one.peak),
		one.where,
		_runs(one),
	])
}

_severity(one) := "warning" if {
	one.peak > data.vapor.amounts.most_g_m2
} else := "note"

_runs(one) := "; so much runs off a tight face" if {
	one.peak > data.vapor.amounts.runoff_g_m2
} else := ""
