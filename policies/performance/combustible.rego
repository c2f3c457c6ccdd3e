# METADATA
# title: Foam where the notes ask for insulation that does not burn
# description: |
#   The notes ask for noncombustible insulation in the cavity, and the row has a foam board or sprayed foam there, or
#   is of a sheet and names a foam board outside of it. The wall's fire test was made without it, and in a fire the
#   cavity is a chimney. It does not apply to rows below grade or on roofs, which the notes on the cavity do not mean,
#   nor where the notes ask for nothing.
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
import data.lib.naming

findings contains found if {
	count(_asks) > 0
	some line in facts.live_lines
	line.role == "insulation"
	not _is_elsewhere(line)
	item := facts.main_items(line)[0]
	item.family in data.performance.fire.foams
	message := naming.say("%s is foam, and the notes ask for insulation that does not burn", [naming.plain(item)])
	found := finding.at_with(line, ["material", "tag"], message, {"related": [_asks[0]]})
}

# A row of a sheet names the foam that lies outside of it.
findings contains found if {
	count(_asks) > 0
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not _is_elsewhere(line)
	some item in facts.items_in(line, data.vapor.barriers.outside_slots)
	item.family in data.performance.fire.boards
	message := naming.say("%s outside of %s is foam, and the notes ask for insulation that does not burn", [
		naming.plain(item),
		naming.plain(facts.main_items(line)[0]),
	])
	found := finding.at_with(line, [item.at.cell], message, {"related": [_asks[0]]})
}

_asks := [finding.related_address(said.at, said.text) |
	some said in input.project.signals
	said.id == "noncombustible_insulation"
	not said.no
]

_is_elsewhere(line) if facts.said(line, "below_grade")

_is_elsewhere(line) if {
	some text in [line.mark, line.group, line.place, object.get(line.texts, "type", "")]
	some words in data.vapor.barriers.excused_words
	regex.match(words, lower(text))
}
