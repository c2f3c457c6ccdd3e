# METADATA
# title: Sealant or adhesive below its least temperature
# description: |
#   A stiff bead does not wet the joint and is not pressed home by the tool; frost on the face does the rest.
#   After two winters it has let go along one side and drinks water. Joint sealants usually ask for 40 F (4 C);
#   silicones go far lower on a frost-free face. Told where half of the working hours are too cold, and as a note
#   where the workbook states no figure and the usual one was taken; also where the notes judge by the usual low of the
#   month and that is below the figure. It does not apply where the row's sheet or primer is told of already, nor where
#   the work is heated.
# custom:
#   id: temperature-cold-bead
#   topic: temperature
#   severity: warning
#   reason: A cold bead does not wet the joint and lets go on one side.
#   remedy: Move the bead to milder days, warm joint and tubes, or take a sealant that its maker allows in the cold.
#   source: the product's data; federal guide specification for joint sealants, 40 to 90 F
#   basis: source-read
#   example: "Sealant S-2 (from 40 F) run on 14 Jan in Calgary in the open"
package temperature.cold_bead

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds

findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	check := odds.cold(window, data.temperature.roles.bead).check
	_is_cold(window, check)
	not odds.sheet(window)
	not odds.primer(window)
	found := finding.at_with(line, forecast.slots(line, [check]), _message(line, window, check), {
		"severity": _severity(check),
		"related": forecast.related(line, [check]),
		"facts": forecast.judged([check]),
	})
}

_is_cold(_, check) if check.share_below >= data.temperature.cold.bead_share

_is_cold(window, check) if odds.below_month(window, check)

_severity(check) := "warning" if check.stated

_severity(check) := "note" if not check.stated

_message(line, window, check) := naming.say("%s goes on from %s%s, but %s", [
	forecast.name(check),
	limit,
	_usual(check),
	forecast.how(line, window, check, limit),
]) if {
	limit := degrees.write(check.limit_c, degrees.like(line, check))
}

_usual(check) := "" if check.stated

_usual(check) := " as a rule" if not check.stated
