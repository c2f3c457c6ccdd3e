# METADATA
# title: Pull test below what is asked for
# description: |
#   A pull test of the row, the lowest of several, gave less than the notes of the project ask for. A membrane that
#   hangs on dust or on a damp face passes by eye and lets go in the first storm, behind the cladding. It does not
#   apply where the row says that the place was done again and tested again.
# custom:
#   id: performance-pull-low
#   topic: performance
#   severity: error
#   reason: What holds less than it must lets go in wind, behind the cover.
#   remedy: Find out why (dust, damp, cold, thin film), take it off as far as it fails, do it again and test it again.
#   source: the notes of this workbook; ASTM D4541, from memory
#   basis: common-practice
#   example: "Pull tests 9, 11, 8 psi; the notes ask for 16 psi or more"
package performance.pull_low

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	pull := line.figures.pull_pa
	measure.is_sound(pull)
	item := facts.main_items(line)[0]
	asked := array.concat(limits.limits_for("pull_pa", line, item.keys, line.role), _of_fluids(item))
	limit := limits.highest_min(asked)
	measure.low(pull) < limit.min * (1 - data.performance.pull.share)
	not _is_done_again(line, pull)
	message := naming.say("the pull test of %s gave %s; the notes ask for %s or more", [
		naming.plain(item),
		measure.as_said("strength", pull),
		measure.written(limit.min, "strength", pull),
	])
	found := finding.at_with(line, ["material", "tag", pull.at.cell], message, {
		"related": [finding.related_address(limit.at, limit.text)],
	})
}

# "Fluids 16 psi" holds for all that is rolled or sprayed, whatever it is made of.
_of_fluids(item) := [limit |
	regex.match(data.performance.films.applied, item.family)
	some limit in limits.by_kind.pull_pa
	"fluid-applied-unspecified" in limit.keys
]

_is_done_again(line, pull) if {
	some slot, cell in line.cells
	cell == pull.at.cell
	regex.match(data.performance.pull.again, lower(line.texts[slot]))
}
