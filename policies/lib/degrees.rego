# METADATA
# title: Temperatures in words
# description: |
#   Writes a temperature in the unit that the author wrote first: "4 °C (40 °F)" is answered in Celsius.
package lib.degrees

import data.lib.facts
import data.lib.words

# write(-6.67, "40 F") is "20 °F".
write(celsius, like) := sprintf("%d °F", [round(((celsius * 9) / 5) + 32)]) if _is_fahrenheit(like)

write(celsius, like) := sprintf("%s °C", [words.number(celsius)]) if not _is_fahrenheit(like)

# like is the author's way to write the limit of a check: its words, with the unit of the column where they have none.
like(line, check) := check.limit_text if {
	_unit(check.limit_text) != ""
} else := sprintf("%s %s", [check.limit_text, line.figures[check.bound].unit]) if {
	line.figures[check.bound].unit != ""
} else := sprintf("%s %s", [check.limit_text, facts.product_of(check).figures[check.bound].unit]) if {
	facts.product_of(check).figures[check.bound].unit != ""
} else := check.limit_text

# of_figure is the author's way to write a figure.
of_figure(figure) := figure.text if {
	_unit(figure.text) != ""
} else := sprintf("%s %s", [figure.text, figure.unit])

_is_fahrenheit(like) if _unit(like) == "F"

_unit(text) := upper(found[0][1]) if {
	found := regex.find_all_string_submatch_n(`(?i)(?:\d|°|º|deg\w*\.?)\s*(?:°|º)?\s*([fc])\b`, text, 1)
	count(found) > 0
} else := upper(substring(text, count(text) - 1, 1)) if {
	regex.match(`(?i)\s[fc]$`, text) # the unit of a heading, after words
} else := "F" if {
	regex.match(`(?i)fahrenheit`, text)
} else := ""
