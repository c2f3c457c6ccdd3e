# METADATA
# title: Air test above what is asked for
# description: |
#   A panel, mock-up or wall was tested for air and leaks more than the notes of the project allow for it. What the
#   fan draws in an hour the wind draws for years, and the moisture of the rooms goes with it. Only a limit that speaks
#   of panels, walls or their test counts: that of a sheet is ten times as strict. It does not apply where the row says
#   that it was mended and tested again.
# custom:
#   id: performance-air-result
#   topic: performance
#   severity: error
#   reason: Air that gets through carries moisture into the wall, and says that a joint or lap is open.
#   remedy: Find the leak with smoke or soap, seal it and test again before it is covered.
#   source: the notes of this workbook; ASTM E2357 and E783 are such tests, from memory
#   basis: common-practice
#   example: "Mock-up: 0.45 L/(s·m²) at 75 Pa; the notes ask for 0.20 or less"
package performance.air_result

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	result := line.figures.air_result_lsm2
	measure.is_sound(result)
	limit := limits.lowest_max(_asked(line))
	measure.high(result) > limit.max * (1 + data.performance.air.tolerance)
	not _is_done_again(line, result)
	message := naming.say("the air test%s gave %s; the notes ask for %s or less", [
		_of(line),
		measure.as_said("air", result),
		measure.written(limit.max, "air", result),
	])
	found := finding.at_with(line, ["mark", result.at.cell], message, {
		"related": [finding.related_address(limit.at, limit.text)],
	})
}

# That of an assembly by its own words, else of what the note names.
_asked(line) := asked if {
	asked := limits.limits_for("air_result_lsm2", line, _keys(line), line.role)
	count(asked) > 0
} else := [asked |
	some asked in limits.limits_for("air_lsm2", line, _keys(line), line.role)
	regex.match(data.performance.air.assemblies, lower(asked.text))
]

# A row of a test may name no material.
_keys(line) := facts.main_items(line)[0].keys

default _keys(_) := []

_of(line) := sprintf(" in the row of %s", [naming.plain(facts.main_items(line)[0])])

default _of(_) := ""

_is_done_again(line, result) if {
	some slot, cell in line.cells
	cell == result.at.cell
	regex.match(data.performance.air.again, lower(line.texts[slot]))
}
