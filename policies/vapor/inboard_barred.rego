# METADATA
# title: Insulation inside of a sheet whose wall type keeps it all outside
# description: |
#   The wall type says that all insulation lies outside of the sheet, and the row puts batts or boards on the room side
#   besides. The sheet is then as much colder as the insulation inside takes of the warmth, and over a pool, a laundry
#   or a kitchen water runs down its inner face all winter, out of sight behind the lining. It does not apply to
#   insulation that the row leaves out or puts outside, nor to wall types that say nothing of the inner side.
# custom:
#   id: vapor-inboard-barred
#   topic: vapor
#   severity: error
#   reason: Insulation inside makes the sheet cold, and room moisture condenses on it.
#   remedy: Leave the insulation inside out, or have the wall computed anew with it and give it a type of its own.
#   source: the workbook's own wall types
#   basis: source-read
#   example: "row: 50 mm batt inboard; wall type W4: all insulation outboard of the sheet"
package vapor.inboard_barred

import data.lib.facts
import data.lib.finding
import data.lib.wall_type
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	item := _inside(line)[0]
	told := _told(line)[0]
	message := sprintf("%s lies on the room side (%s), but wall type %s says %s", [
		item.text,
		words.quoted(item.clause),
		told.name,
		words.quoted(told.text),
	])
	found := finding.at_with(line, ["material", item.at.cell], message, {"related": [finding.related(
		told.wall,
		[told.slot],
		"the wall type",
	)]})
}

_inside(line) := [item |
	some item in line.items
	item.class == "insulation"
	item.polarity == "yes"
	facts.is_there(item)
	clause := lower(item.clause)
	regex.match(data.vapor.inboard.inside, clause)
	not regex.match(data.vapor.inboard.outside, clause)
]

# _told lists what the build-up of the row's wall type says of insulation inside.
_told(line) := [{"wall": wall, "name": wall.mark, "slot": slot, "text": text} |
	some wall in wall_type.of(line)
	some slot, text in wall.texts
	regex.match(data.vapor.inboard.barred, lower(text))
]
