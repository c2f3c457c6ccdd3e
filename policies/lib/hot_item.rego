# METADATA
# title: Hot parts told in a row
# description: |
#   The highest temperature that a row tells of a part next to its sheet ("flange runs at 160 F"): {"c", "text",
#   "slot"}. A part that is insulated or clear of the sheet, and the heat of tools and tents, are left out.
package lib.hot_item

hottest(line) := worst if {
	told := [t |
		some slot in data.temperature.hot_item.slots
		some part in regex.split(`;|\n|\.\s`, line.texts[slot])
		regex.match(data.temperature.hot_item.words, lower(part))
		not regex.match(data.temperature.hot_item.unless, lower(part))
		c := _celsius(part)
		t := {"c": c, "text": trim_space(part), "slot": slot}
	]
	top := max([t.c | some t in told])
	worst := [t | some t in told; t.c == top][0]
}

# The first figure is the author's; a second unit in brackets says the same.
_celsius(text) := c if {
	found := regex.find_all_string_submatch_n(data.temperature.hot_item.figure, text, 1)
	c := _of(to_number(found[0][1]), found[0][2])
}

_of(value, unit) := value if unit == "C"

_of(value, unit) := ((value - 32) * 5) / 9 if unit == "F"
