# METADATA
# title: Measures
# description: |
#   Values of figures, and how a computed value is written in the unit that the author uses.
package lib.measure

import data.lib.words

# high is what a figure reaches at most, low what it is at least; undefined without a value.
high(figure) := figure.max if {
	figure.max != null
} else := figure.min if {
	figure.min != null
}

low(figure) := figure.min if {
	figure.min != null
} else := figure.max if {
	figure.max != null
}

# is_sound: the figure has a value, no trouble of its own, and its two units agree.
is_sound(figure) if {
	_has_value(figure)
	figure.problem == ""
	not figure.disagree
}

_has_value(figure) if figure.min != null

_has_value(figure) if figure.max != null

# written(0.1016, "air", figure) writes a value in the unit of the figure's words: "0.02 cfm/ft²".
written(value, "temperature", figure) := words.temperature(value, unit_words(figure))

written(value, kind, figure) := sprintf("%s %s", [number(_soft(value / unit.size, unit)), unit.unit]) if {
	kind != "temperature"
	unit := unit_of(kind, figure)
}

_soft(x, unit) := near if {
	near := round(x / unit.soft.step) * unit.soft.step
	near > 0
	abs(x - near) <= near * unit.soft.share
} else := x

# beside writes a limit in the unit of the figure that is held against it, where its own words have that unit too:
# "75 mm (3 in)" is 75 mm to a row in millimeters.
beside(value, kind, limit, figure) := written(value, kind, figure) if {
	regex.match(unit_of(kind, figure).like, lower(unit_words(limit)))
} else := written(value, kind, limit)

# unit_of is the unit of the kind in the figure's words: {"like", "unit", "size"}.
unit_of(kind, figure) := [one |
	some one in data.lib.measures[kind]
	regex.match(one.like, lower(unit_words(figure)))
][0]

# as_said writes the figure in the author's words, with its unit; of a long cell only the figure.
as_said(kind, figure) := words.figure(figure, written(high(figure), kind, figure)) if {
	count(figure.text) <= 24
	not _is_of_several(figure)
} else := written(high(figure), kind, figure)

# "1 / 4 in." of sides and ends would read as a quarter of an inch; "1 1/2" and "3/4" are one figure.
_is_of_several(figure) if {
	figure.min == figure.max
	regex.match(`\d\s+/\s*\d|\d/\s+\d`, figure.text)
}

# cell lists the cells of a figure: its own address if it has one, else its slots.
cell(figure, _) := [figure.at.cell] if object.get(figure, ["at", "cell"], "") != ""

cell(figure, key) := data.lib.measures.slots[key] if object.get(figure, ["at", "cell"], "") == ""

# unit_words are the words of a figure that may tell its unit.
unit_words(figure) := sprintf("%s %s", [object.get(figure, "text", ""), object.get(figure, "unit", "")])

# number writes three figures that count: 40, 1.14, 0.0203.
number(x) := sprintf("%d", [round(x)]) if {
	abs(x - round(x)) <= abs(x) / 1000
} else := sprintf("%d", [round(x)]) if {
	abs(x) >= 100
} else := _trimmed("%.1f", x) if {
	abs(x) >= 10
} else := _trimmed("%.2f", x) if {
	abs(x) >= 1
} else := _trimmed("%.4f", x)

_trimmed(format, x) := trim_right(trim_right(sprintf(format, [x]), "0"), ".")
