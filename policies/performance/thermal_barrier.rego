# METADATA
# title: Foam left bare toward a room
# description: |
#   Foam plastic stays in view of a room, with no board or tested coating over it. It lights from a torch or a bin fire
#   and the room is alight in two minutes. Codes ask for a thermal barrier (1/2 in gypsum board or what was tested as
#   such) between foam and the inside of a building; notes that ask for one are named. It does not apply to foam
#   outside or in a closed cavity, to rows that wait for their board, nor to foam whose data tells of a test without
#   one.
# custom:
#   id: performance-thermal-barrier
#   topic: performance
#   severity: error
#   reason: Bare foam burns fast and with dense smoke, and the room fills before anybody is out.
#   remedy: Cover it with gypsum board, or spray a coating tested over this very foam, and show the report.
#   source: IBC 2603.4 and NBC 3.1.4.2 on the protection of foam plastics (from memory)
#   basis: from-memory
#   example: "closed-cell foam on the mechanical room wall, no thermal barrier"
package performance.thermal_barrier

import data.lib.facts
import data.lib.finding
import data.lib.mended
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	item.family in data.performance.fire.foams
	told := mended.open(line, "room_bare")[0]
	not _is_tested(line, item)
	message := naming.say("%s is bare toward the room (%s)%s", [naming.plain(item), words.quoted(told.text), _asks])
	found := finding.at_with(line, ["material", "tag", told.slot, told.at.cell], message, {"related": _notes})
}

# A foam may be tested without a barrier; "no test" is none.
_is_tested(line, item) if {
	some row in array.concat([line], [product | product := facts.product_of(item)])
	some text in row.texts
	regex.match(data.performance.fire.bare_tested, lower(text))
	not regex.match(data.performance.fire.bare_untested, lower(text))
}

_notes := [finding.related_address(note.at, note.text) |
	some note in input.project.notes
	regex.match(data.performance.fire.barrier_asked, lower(note.text))
]

default _asks := ""

_asks := "; the notes ask for a thermal barrier" if count(_notes) > 0
