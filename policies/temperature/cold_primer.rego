# METADATA
# title: Primer put on below its least temperature
# description: |
#   The sheet may be a winter grade while its primer is not: the pair's limit is the higher of the two. A
#   water-borne primer that freezes before it is dry turns to powder, and within two years the sheet peels off
#   with it; a solvent-borne one stays wet and is trapped. A usual figure, where the workbook states none, is
#   asked about. It does not apply where the sheet itself is too cold as well, since that finding names both, nor
#   where the work is heated.
# custom:
#   id: temperature-cold-primer
#   topic: temperature
#   severity: error
#   reason: A primer below its least temperature freezes or does not dry, and the sheet sticks to a film that lets go.
#   remedy: >-
#     Take a primer for the cold that the sheet's data allows (solvent-borne: mind flame and fumes), or heat the work
#     until the primer is dry.
#   source: the product's data; else common practice for water-borne primers, 40 F (4 C) and no frost until dry
#   basis: common-practice
#   example: "Water-borne P-2 (from 40 F) rolled on at 7:30 am on 19 Jan in Denver, no heat; the sheet goes to 20 F"
package temperature.cold_primer

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	told := odds.primer(window)
	not odds.sheet(window)
	found := finding.at_with(line, forecast.slots(line, [told.check]), _message(line, window, told.check), {
		"severity": told.level,
		"related": forecast.related(line, [told.check]),
		"facts": forecast.judged([told.check]),
		"keys": {"share_below": told.check.share_below, "limit_c": told.check.limit_c},
	})
}

_message(line, window, check) := naming.say("%s goes on from %s, but %s%s%s", [
	forecast.primer_name(check),
	limit,
	forecast.how(line, window, check, limit),
	_frost(window, check),
	_sheet(line, window, like),
]) if {
	like := degrees.like(line, check)
	limit := degrees.write(check.limit_c, like)
}

_frost(window, check) := sprintf(", and %s of nights freeze it", [words.percent(window.night_frost)]) if {
	facts.has_key(check, ["water-borne"])
	window.night_frost >= data.temperature.freezing.nights
} else := ""

_sheet(_, window, like) := sprintf(" (%s itself goes on from %s)", [
	forecast.name(sheets[0]),
	degrees.write(sheets[0].limit_c, like),
]) if {
	sheets := [c |
		some c in window.checks
		c.bound == "apply_min_c"
		c.role in data.temperature.roles.sheet
		c.stated
	]
	count(sheets) > 0
} else := ""
