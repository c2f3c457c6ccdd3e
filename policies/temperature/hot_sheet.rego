# METADATA
# title: Sheet put on above its highest temperature
# description: |
#   A soft winter grade on a hot wall slides under its own weight, stretches, and oozes at the edges; the roll
#   cannot be placed twice, and after two summers the top edge has crept from under its bar. The air alone may
#   pass the limit, and a wall that the row says is in the sun stands well above the air. It does not apply to
#   work in the shade or the morning, unless the air itself is too hot for half of the hours. Where no figure is
#   given for a winter grade, 90 F is taken, which is told, and asked about only.
# custom:
#   id: temperature-hot-sheet
#   topic: temperature
#   severity: warning
#   reason: Above its limit the compound is too soft to hold the sheet where it is placed.
#   remedy: Take the standard grade for summer, or lay the sheet in the shade and read the face before work.
#   source: the product's data; rise in the sun from memory (sol-air form)
#   basis: from-memory
#   example: "Low-temperature SAF-2 (up to 90 F) on a west wall in full sun, mid-July in Charleston"
package temperature.hot_sheet

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.thermometer
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	not thermometer.reading(line)
	check := _hot(line, window)[0]
	found := finding.at_with(line, forecast.slots(line, [check]), _message(line, window, check), {
		"severity": _severity(line, check),
		"related": forecast.related(line, [check]),
		"facts": forecast.judged([check]),
		"keys": {"share_above": check.share_above, "limit_c": check.limit_c},
	})
}

_hot(line, window) := [check |
	some check in window.checks
	check.bound == "apply_max_c"
	check.role in data.temperature.roles.sheet
	_is_over(line, window, check)
	not _is_read(line, check)
]

# The top of the range that was read is within the limit, or its bottom is over it, which is told by itself.
_is_read(line, check) if thermometer.highest(line).c <= check.limit_c

_is_read(line, check) if thermometer.lowest(line).c > check.limit_c + data.temperature.reading.tolerance_k

_is_over(line, _, check) if {
	check.share_above >= data.temperature.heat.share_above
	not _is_cooled(line)
}

_is_over(_, _, check) if check.share_above >= data.temperature.heat.shade_share

_is_over(line, window, check) if {
	facts.said(line, "sun_exposed")
	not _is_cooled(line)
	window.mean_max_c + data.temperature.heat.sun_rise_k > check.limit_c
}

_is_cooled(line) if {
	some signal in ["shaded", "morning_work"]
	facts.said(line, signal)
}

# In the sun, with air that passes the limit by itself, nothing is left to ask; a usual figure is only asked about.
_severity(line, check) := "error" if {
	check.stated
	check.share_above >= data.temperature.heat.share_above
	facts.said(line, "sun_exposed")
} else := "warning"

_message(line, window, check) := naming.say("%s goes on up to %s, but %s%s %s%s", [
	forecast.name(check),
	forecast.limit(check, like),
	forecast.when(window),
	forecast.where(window),
	_air(window, check, like),
	_sun(line, window, like),
]) if {
	like := degrees.like(line, check)
}

_air(window, check, like) := sprintf("the air is above that in %s of working hours", [share]) if {
	check.share_above >= data.temperature.heat.share_above
	share := words.percent(check.share_above)
} else := sprintf("the usual high is %s", [degrees.write(round(window.mean_max_c), like)])

_sun(line, window, like) := sprintf(", and the wall in the sun is near %s", [written]) if {
	facts.said(line, "sun_exposed")
	written := degrees.write(round(window.mean_max_c + data.temperature.heat.sun_rise_k), like)
} else := ""
