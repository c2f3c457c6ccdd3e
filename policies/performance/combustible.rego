# METADATA
# title: Foam where the notes ask for insulation that does not burn
# description: |
#   The notes ask for noncombustible insulation in the cavity, and the row has a foam board or sprayed foam there, or is
#   of a sheet and names a foam board outside of it. The wall's fire test was made without it, and in a fire the cavity
#   is a chimney. A note that names its wall types holds in those alone, and one that names a height above grade holds
#   above the base of the wall. It does not apply to rows below grade or on roofs, which the notes on the cavity do not
#   mean, to foam sprayed into the gap at a frame or deck, nor where the notes ask for nothing.
# custom:
#   id: performance-combustible
#   topic: performance
#   severity: error
#   reason: Foam burns, and a fire test of the wall holds only for what was in it.
#   remedy: Use mineral wool there, or bring the fire engineer's letter on a test of the wall with this foam.
#   source: NFPA 285 and ASTM E136, as IBC chapter 26 asks for them in walls that must not burn (from memory)
#   basis: from-memory
#   example: "notes: cavity insulation noncombustible; row: 75 mm polyiso outside of the sheet"
package performance.combustible

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.naming
import data.lib.wall_type

findings contains found if {
	some line in facts.live_lines
	line.role == "insulation"
	not _is_elsewhere(line)
	item := facts.main_items(line)[0]
	item.family in data.performance.fire.foams
	not _fills_a_gap(line, item)
	asks := _asks(line)[0]
	message := naming.say("%s is foam, and the notes ask for insulation that does not burn", [naming.plain(item)])
	found := finding.at_with(line, ["material", "tag"], message, {"related": [asks]})
}

# A row of a sheet names the foam that lies outside of it.
findings contains found if {
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not _is_elsewhere(line)
	some item in facts.items_in(line, data.vapor.barriers.outside_slots)
	item.family in data.performance.fire.boards
	asks := _asks(line)[0]
	message := naming.say("%s outside of %s is foam, and the notes ask for insulation that does not burn", [
		naming.plain(item),
		naming.plain(facts.main_items(line)[0]),
	])
	found := finding.at_with(line, [item.at.cell], message, {"related": [asks]})
}

# _asks lists where the notes ask for it: of all the job, of the row's wall type, or of what is above the base.
_asks(line) := array.concat(_of_all, [finding.related_address(limit.at, limit.text) |
	some limit in limits.limits_for("noncombustible", line, [], line.role)
	_is_there(limit, line)
])

_is_there(limit, _) if limit.scope != ""

_is_there(limit, line) if {
	limit.scope == ""
	regex.match(data.performance.fire.above, lower(limit.text))
	not _is_low(line)
}

# At the foot of the wall, where foam may lie behind stone or in the splash of the rain.
_is_low(line) if {
	some slot in ["mark", "group", "place", "type", "substrate", "front", "remark"]
	regex.match(data.performance.fire.low, lower(object.get(line.texts, slot, "")))
}

# A list of walls does not tell how high they reach.
_is_low(line) if object.get(line.texts, "layers", "") != ""

# The row's wall has foam by its own build-up.
_is_low(line) if {
	some wall in wall_type.of(line)
	some item in wall.items
	item.family in data.performance.fire.boards
}

_of_all := [finding.related_address(said.at, said.text) |
	some said in input.project.signals
	said.id == "noncombustible_insulation"
	not said.no
]

# What is sprayed into the gap at a frame or deck is no insulation of the cavity.
_fills_a_gap(line, item) if {
	not item.family in data.performance.fire.boards
	some text in line.texts
	regex.match(data.performance.fire.gaps, lower(text))
}

_is_elsewhere(line) if facts.said(line, "below_grade")

_is_elsewhere(line) if {
	some text in [line.mark, line.group, line.place, object.get(line.texts, "type", "")]
	some words in data.vapor.barriers.excused_words
	regex.match(words, lower(text))
}
