# METADATA
# title: Temperature read that the season does not have
# description: |
#   The log has a temperature of the air far above the usual maximum, or far below the usual minimum, of those days at
#   that place. A sign was dropped, the wrong unit was read, or the reading is of another place; the row then looks
#   right while the work was done in the cold. It does not apply to rows that tell of heat or a tent, to readings of
#   the surface, which the sun warms, nor to a range.
# custom:
#   id: data-reading-implausible
#   topic: data
#   severity: warning
#   reason: What was put on by a wrong reading was maybe put on too cold.
#   remedy: Ask for the log of the day, and test the adhesion where no better reading is at hand.
#   source: monthly normals of the place; the margin is about three times the usual scatter of days (from memory)
#   basis: from-memory
#   example: "15 °C read on 20 Jan in Winnipeg, no tent"
package data.reading_implausible

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.odds
import data.lib.thermometer
import data.lib.words

findings contains finding.at(line, [reading.figure.at.cell, "install"], message) if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	reading := thermometer.reading(line)
	reading.what == "air"
	usual := _usual(window, reading.c)
	like := degrees.of_figure(reading.figure)
	message := sprintf("the air was read at %s on %s, where the usual %s of those days is %s", [
		degrees.write(reading.c, like),
		words.date_range(line.dates.install.from, line.dates.install.to),
		usual.what,
		degrees.write(usual.c, like),
	])
}

_usual(window, c) := {"what": "maximum", "c": window.mean_max_c} if {
	c > window.mean_max_c + data.data.plausible.air_margin_k
} else := {"what": "minimum", "c": window.mean_min_c} if {
	c < window.mean_min_c - data.data.plausible.air_margin_k
}
