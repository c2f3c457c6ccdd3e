# METADATA
# title: Surface too near the dew point
# description: |
#   The row tells what was measured: the surface, and the air with its humidity or its dew point. A surface within 3
#   K (5 F) of the dew point grows a film of water that nobody sees, most of all in a clear dawn or when warm air
#   meets cold steel or block. Where the project's notes ask for another margin, that one holds. Primer flashes over
#   it and the sheet sticks to water; by the second winter it hangs in blisters and edges peel. Below freezing it is
#   the frost point that counts. It does not apply to readings told as a limit ("at least 5 F above dew point"), to
#   hybrid fluids that cure with water, nor where one was not read.
# custom:
#   id: temperature-dew-margin
#   topic: temperature
#   severity: warning
#   reason: Water condenses on a surface at the dew point, and neither primer nor adhesive wets through it.
#   remedy: Wait until the surface keeps that margin above the dew point, or warm and dry it; read both again.
#   source: ISO 8502-4 as told second-hand, 3 K; coatings practice, 5 F
#   basis: source-read
#   example: "Remark: board 38F, air 42F, 85% RH"
package temperature.dew_margin

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	margin := line.figures.reading_margin_k
	measure.is_sound(margin)
	item := sheet.own(line)
	not facts.has_key(item, data.temperature.dew.tolerant_keys)
	asked := _asked(line, item)
	margin.min < asked.need - data.temperature.dew.rounding_k
	message := naming.say("%s goes on a surface %s; %s", [
		naming.plain(item),
		_told(line, margin),
		_written(line, asked),
	])
	found := finding.at_with(line, _cells(line), message, object.union({"severity": _severity(margin)}, asked.more))
}

_severity(margin) := "error" if margin.min <= 0

_severity(margin) := "warning" if margin.min > 0

# _asked is the margin that the notes ask for, else the usual one.
_asked(line, item) := {
	"need": limit.min,
	"who": "the notes ask for",
	"more": {"related": [finding.related_address(limit.at, limit.text)]},
} if {
	limit := limits.highest_min(limits.limits_for("dew_margin_k", line, item.keys, line.role))
} else := {"need": data.temperature.dew.margin_us_k, "who": "", "more": {}} if {
	_is_fahrenheit(line)
} else := {"need": data.temperature.dew.margin_k, "who": "", "more": {}}

_told(line, _) := sprintf("of %s with the dew point at %s", [_degrees(surface), _degrees(dew)]) if {
	surface := line.figures.reading_surface_c
	dew := object.union(line.figures.reading_dew_c, {"like": surface})
} else := sprintf("%s above the dew point", [margin.text]) if {
	margin := line.figures.reading_margin_k
}

# A dew point that was computed is written as the surface is.
_degrees(figure) := words.temperature(figure.min, measure.unit_words(object.get(figure, "like", figure)))

_written(line, asked) := sprintf("a margin of %s is asked for", [_kelvin(line, asked.need)]) if asked.who == ""

_written(line, asked) := sprintf("%s a margin of %s", [asked.who, _kelvin(line, asked.need)]) if asked.who != ""

_kelvin(line, k) := sprintf("%s °F", [words.number(round(k * 18) / 10)]) if _is_fahrenheit(line)

_kelvin(line, k) := sprintf("%s K", [words.number(round(k * 10) / 10)]) if not _is_fahrenheit(line)

_is_fahrenheit(line) if {
	some key in ["reading_surface_c", "reading_margin_k"]
	words.uses_fahrenheit(sprintf("0 %s", [line.figures[key].unit]))
}

_cells(line) := {line.figures[key].at.cell |
	some key in ["reading_surface_c", "reading_air_c", "reading_rh", "reading_dew_c", "reading_margin_k"]
	line.figures[key].at.cell != ""
}
