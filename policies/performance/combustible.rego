# METADATA
# title: Foam where the notes ask for insulation that does not burn
# description: |
#   The notes ask for noncombustible insulation in the cavity, and the row has a foam board or sprayed foam there, or
#   is of a sheet and names a foam board outside of it. The wall's fire test was made without it, and in a fire the
#   cavity is a chimney. A note that names its wall types holds in those alone. It does not apply to rows below grade or
#   on roofs, which the notes on the cavity do not mean, to foam sprayed into the gap at a frame or deck, nor where the
#   notes ask for nothing.
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

# _asks lists where the notes ask for it: of all the job, or of the row's wall type.
_asks(line) := array.concat(_of_all, [finding.related_address(limit.at, limit.text) |
	some limit in limits.limits_for("noncombustible", line, [], line.role)
	limit.scope != ""
])

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
