# METADATA
# title: Wood too wet for the sheet
# description: |
#   The moisture read in the wood is over what the notes allow, or, where they say nothing, over what wood may hold
#   when it is closed in. It does not apply to a reading exactly on the limit, nor to concrete and masonry, which
#   are tested in other ways.
# custom:
#   id: pairing-wood-moisture
#   topic: pairing
#   severity: error
#   reason: Wet wood holds no adhesive, shrinks under the sheet, and cannot dry behind it.
#   remedy: Let the wood dry under cover and read it again before the primer.
#   source: "common practice: no more than 19 % when wood is closed in, many makers ask for less"
#   basis: common-practice
#   example: "OSB, MC 26 % after storm; notes: wood sheathing 19 % MC at most"
package pairing.wood_moisture

import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	read := line.figures.wood_moisture
	bed := [b | some b in sheet.beds_of(line); "wood" in b.under.keys][0]
	allowed := _allowed(line, bed)
	measure.low(read) > allowed.share
	message := naming.say("%s goes on %s at %s moisture; %s", [
		naming.plain(bed.item),
		bed.under.text,
		words.percent(measure.low(read)),
		allowed.says,
	])
	found := finding.at_with(line, ["material", "tag", "substrate", "wood_moisture"], message, {
		"severity": allowed.severity,
		"related": allowed.related,
	})
}

_allowed(line, bed) := {
	"share": limit.max,
	"says": sprintf("the notes allow %s", [words.percent(limit.max)]),
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := limits.lowest_max(limits.limits_for("wood_moisture", line, bed.item.keys, line.role))
} else := {
	"share": usual,
	"says": sprintf("%s is the usual most for wood that is closed in", [words.percent(usual)]),
	"severity": "warning",
	"related": [],
} if {
	usual := data.pairing.wood.moisture.usual_most
}
