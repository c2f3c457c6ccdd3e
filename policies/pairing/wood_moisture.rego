# METADATA
# title: Wood too wet for the sheet
# description: |
#   The moisture read in the wood is over what the notes allow, or, where they say nothing, over what wood may hold
#   when it is closed in. It does not apply to a reading exactly on the limit, nor to concrete, masonry and gypsum,
#   which are tested in other ways, unless the notes name them with a most of their own.
# custom:
#   id: pairing-wood-moisture
#   topic: pairing
#   severity: error
#   reason: A wet bed holds no adhesive and cannot dry behind the sheet, and wood shrinks under it.
#   remedy: Let it dry under cover and read it again before the primer.
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
	bed := [b | some b in sheet.beds_of(line); _is_judged(line, b)][0]
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

# Wood has a usual most; of other beds only a note that names them tells one: "concrete 5%, gypsum 1%".
_is_judged(_, bed) if "wood" in bed.under.keys

_is_judged(line, bed) if count(_named(line, bed)) > 0

_named(line, bed) := [limit |
	some limit in _limits(line, bed)
	count(limit.keys) > 0
]

# A limit may be for what is laid over the bed: "concrete 12 % below sheet, 5 % below liquid".
_limits(line, bed) := [limit |
	some limit in limits.limits_for("wood_moisture", line, _keys(bed), line.role)
	_is_laid(object.get(limit, "over", []), bed.item)
]

_is_laid([], _)

_is_laid(over, item) if {
	some name in over
	name in array.concat(item.keys, [item.product])
}

_allowed(line, bed) := {
	"share": limit.max,
	"says": sprintf("the notes allow %s", [words.percent(limit.max)]),
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := limits.lowest_max(_noted(line, bed))
} else := {
	"share": usual,
	"says": sprintf("%s is the usual most for wood that is closed in", [words.percent(usual)]),
	"severity": "warning",
	"related": [],
} if {
	usual := data.pairing.wood.moisture.usual_most
}

_noted(line, bed) := _named(line, bed) if not "wood" in bed.under.keys

_noted(line, bed) := _limits(line, bed) if "wood" in bed.under.keys

# A note may name the sheet, or what it goes on.
_keys(bed) := array.concat(bed.item.keys, bed.under.keys)
