# METADATA
# title: Water-borne primer before a night of frost
# description: |
#   By day the air is mostly warm enough, and half of the nights or more it freezes. A water-borne primer that is
#   not dry and covered by evening freezes on the wall and is powder in the morning; within two years the sheet
#   comes off with it. The tin in the shed freezes too. A note, as a crew that primes by noon and covers by three
#   does well; a question where nearly every night freezes and the row or the data says to keep it from frost, or
#   where the data asks for hours without frost, into which a night comes, and nearly a third of them freezes. A
#   primer of which no least temperature is known is named only where nearly every night freezes. It does not apply
#   where the work is heated, nor to solvent-borne primers that nothing says to keep from frost.
# custom:
#   id: temperature-freezing-primer
#   topic: temperature
#   severity: note
#   reason: Water-borne primer that freezes before it is dry does not form a film.
#   remedy: Prime by noon and cover the same day, keep the tins from frost, or take a primer for the cold.
#   source: common practice (water-borne primer and emulsion are kept from freezing until dry)
#   basis: common-practice
#   example: "Water-borne primer, mid-April in Calgary: 71% of nights below freezing"
package temperature.freezing_primer

import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	window.night_frost >= data.temperature.freezing.asked_nights
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	check := array.concat(_wet(line, window), _unstated(line, window))[0]
	not odds.primer(window)
	not odds.sheet(window)
	found := finding.at_with(line, forecast.slots(line, [check]), _message(window, check), {
		"severity": _severity(line, window, check),
		"facts": forecast.judged([check]),
	})
}

_wet(line, window) := [check |
	some check in window.checks
	check.role == "primer"
	check.bound == "apply_min_c"
	check.share_below >= data.temperature.freezing.share_below
	_may_freeze(line, check)
	_freezes_enough(window, check)
]

_freezes_enough(window, _) if window.night_frost >= data.temperature.freezing.nights

# Fewer nights are too many where the data asks for hours without frost.
_freezes_enough(_, check) if _spans_night(check)

# A water-borne primer that no figure is known for, where nearly every night freezes.
_unstated(line, window) := [object.union(item, {"item": item.id, "bound": "apply_min_c"}) |
	window.night_frost >= data.temperature.freezing.many_nights
	some item in facts.items_in(line, ["primer"])
	item.class == "primer"
	facts.has_key(item, ["water-borne"])
	every check in window.checks { check.item != item.id }
]

_may_freeze(_, check) if facts.has_key(check, ["water-borne"])

_may_freeze(line, check) if _is_told(line, check)

_is_told(line, _) if facts.said_in(line, "primer", "keep_from_freezing")

_is_told(_, check) if facts.said(facts.product_of(check), "keep_from_freezing")

_is_told(_, check) if _spans_night(check)

_severity(line, window, check) := "warning" if {
	window.night_frost >= data.temperature.freezing.many_nights
	_is_told(line, check)
} else := "warning" if {
	_spans_night(check)
} else := "note"

# Hours without frost that the data asks for are as many as a night comes into.
_spans_night(check) if facts.said(facts.product_of(check), "frost_free_hours")

_message(window, check) := naming.say("%s must be dry before night: %s%s %s of nights are below freezing", [
	forecast.primer_name(check),
	forecast.when(window),
	forecast.where(window),
	words.percent(window.night_frost),
])
