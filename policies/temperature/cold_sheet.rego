# METADATA
# title: Sheet put on below its least temperature
# description: |
#   A self-adhered sheet holds by wetting the wall. In the cold its compound is too stiff to flow into the pores: it
#   grabs, looks stuck, and lets go at the laps in the first wind or the first two summers. The odds are those of
#   the air in working hours at the place and dates of the row. Below the limit for half of the hours, with no more
#   than half of the days having four hours running above it, is an error; about a third of the hours is asked
#   about. A winter grade goes on in the warm hours of winter days and is allowed more. Work at mid-day is held
#   against the days that have such hours, an early start or shade counts as colder, and a reading of the wall
#   before work makes the finding milder. Notes that judge by the usual low of the month are followed. Where the
#   primer fails as well, one finding names both. It does not apply to work said to be heated, nor where the place,
#   the date or the sheet's figure and grade are not known.
# custom:
#   id: temperature-cold-sheet
#   topic: temperature
#   severity: error
#   reason: Below its least temperature the adhesive does not flow into the face; the sheet lets go at laps and edges.
#   remedy: >-
#     Take the grade that suits the dates, move the work, or heat the wall under a tent and read the face before work.
#   source: the product's data; federal guide specification for sheet waterproofing (least temperature of air and face)
#   basis: source-read
#   example: "AB-1 (from 40 F) on 19 Jan in Milwaukee, outdoors and unheated"
package temperature.cold_sheet

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds

findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	told := odds.sheet(window)
	checks := array.concat([told.check], _primer(window))
	found := finding.at_with(line, forecast.slots(line, checks), _message(line, window, checks), {
		"severity": _severity(window, told),
		"related": forecast.related(line, checks),
		"facts": forecast.judged(checks),
		"keys": {"share_below": told.check.share_below, "limit_c": told.check.limit_c},
	})
}

_primer(window) := [odds.primer(window).check] if {
	odds.primer(window)
} else := []

_severity(window, told) := "error" if {
	odds.primer(window).level == "error"
} else := told.level

_message(line, window, checks) := naming.say("%s goes on from %s%s, but %s%s", [
	forecast.name(check),
	forecast.limit(check, like),
	_and_primer(line, checks),
	forecast.how(line, window, check, limit),
	forecast.suits(window, check, like),
]) if {
	check := checks[0]
	like := degrees.like(line, check)
	limit := degrees.write(check.limit_c, like)
}

_and_primer(line, checks) := sprintf(" and %s from %s", [
	forecast.primer_name(checks[1]),
	degrees.write(checks[1].limit_c, degrees.like(line, checks[1])),
]) if {
	count(checks) > 1
} else := ""
