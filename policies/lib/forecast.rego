# METADATA
# title: Season odds in words
# description: |
#   How findings tell the odds of a window, the grade that would suit, and the cells and data that take part.
package lib.forecast

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.odds
import data.lib.words

# how words the odds of a check: "on 19 Jan 2027 in Milwaukee the air is below that in 90% of working hours".
how(line, window, check, that) := sprintf("%s%s the air is below %s in %s of working hours%s", [
	when(window),
	where(window),
	that,
	words.percent(check.share_below),
	_month_low(line, window, check),
]) if {
	not odds.is_mid_day(line)
} else := sprintf("%s%s only %s of days have four hours running at or above %s", [
	when(window),
	where(window),
	words.percent(check.days_usable),
	that,
])

# _month_low tells the low that the notes judge by.
_month_low(line, window, check) := sprintf(", and the usual low of the month is %s", [low]) if {
	odds.below_month(window, check)
	low := degrees.write(max(odds.month_lows(window)), degrees.like(line, check))
} else := ""

# when is "on 19 Jan 2027" or "from 12 Jan to 23 Jan 2027".
when(window) := sprintf("on %s", [words.date(window.from)]) if {
	window.from == window.to
} else := sprintf("from %s", [words.date_range(window.from, window.to)])

# where is " in Milwaukee", ", 18 mi west of Milwaukee," or nothing; the sheet's own place where it tells another.
where(window) := sprintf(" in %s", [own]) if {
	own := object.get(window, "place", "")
	own != ""
} else := _where

_where := sprintf(" in %s", [place.text]) if {
	place := input.project.place
	place.text != ""
	count(place.text) <= 40
	not regex.match(`^\d`, place.text)
} else := sprintf(", %s,", [place.text]) if {
	place := input.project.place
	regex.match(`^\d`, place.text)
	count(place.text) <= 40
} else := sprintf(" in %s", [input.project.place.station]) if {
	input.project.place.station != ""
} else := ""

# suits names the mildest usual grade for the window that is colder than the limit, "; the low-temperature grade (from
# 20 °F) would suit", and before it the one that a crew can do with in the warm hours; or that only heat helps.
suits(window, check, like) := "" if {
	facts.has_key(check, data.sequence.edge.edgeless) # what is brushed or sprayed is not sold in grades
} else := "" if {
	facts.has_key(check, ["grade-high-temp"]) # a winter grade serves under no hot metal
} else := sprintf("; %s", [concat(", ", grades)]) if {
	grades := array.concat(_does(window, check, like), _best(window, check, like))
	count(grades) > 0
} else := "; no usual grade suits, it takes a heated enclosure" if {
	count(window.grades) > 0
} else := ""

_best(window, check, like) := [sprintf("the %s (from %s) would suit", [g.name, degrees.write(g.limit_c, like)]) |
	g := _colder(window, check, data.temperature.suits.share_below)[0]
]

_does(window, check, like) := [sprintf("the %s (from %s) would do in %s of them", [g.name, from, part]) |
	g := [g | some g in _colder(window, check, 1); g.share_below < odds.band(g).warning][0]
	g.share_below > data.temperature.suits.share_below
	from := degrees.write(g.limit_c, like)
	part := words.percent(1 - g.share_below)
]

_colder(window, check, most) := [g |
	some g in window.grades
	g.limit_c < check.limit_c
	g.share_below <= most
]

# name is the row's own words for the material of a check.
name(check) := trim_space(check.text) if {
	count(check.text) <= 60
	trim_space(check.text) != ""
} else := check.product if {
	check.product != ""
} else := sprintf("%s …", [trim_space(substring(check.text, 0, 57))])

# primer_name is the same, with the word primer.
primer_name(check) := name(check) if {
	regex.match(`(?i)\bprim`, name(check))
} else := sprintf("primer %s", [name(check)])

# slots are the cells of checks and of their materials in the row, of the words that were heard, the date and the
# shelter.
slots(line, checks) := array.concat(
	[at.cell | some check in checks; some at in _places(line, check); _is_in(at, line)],
	array.concat(
		[s.at.cell | some s in line.signals; s.id in data.temperature.heard; _is_in(s.at, line)],
		["install", "shelter"],
	),
)

_places(line, check) := array.concat([check.at], [item.at | some item in line.items; item.id == check.item])

_is_in(at, row) if {
	at.sheet == row.sheet
	at.row == row.row
}

# limit writes the limit of a check, and marks the one that no data states.
limit(check, like) := degrees.write(check.limit_c, like) if {
	check.stated
} else := sprintf("%s (common practice for its grade)", [degrees.write(check.limit_c, like)])

# judged names the checks that are judged, as facts of the finding.
judged(checks) := [concat(" ", [check.item, check.bound]) | some check in checks]

# related points at the product data that states the limits, and at the note that lets the coldest reading or the low of
# the month decide.
related(line, checks) := array.concat(_data(line, checks), _noted(line, checks))

_noted(line, checks) := [finding.related_address(said.at, said.text) |
	not odds.is_mid_day(line)
	"apply_min_c" in {check.bound | some check in checks}
	some id in ["coldest_counts", "month_low_counts"]
	facts.project_said(id)
	some said in input.project.signals
	said.id == id
]

_data(line, checks) := [finding.related_product(product, [check.at.cell], what) |
	some check in checks
	check.stated
	product := facts.product_of(check)
	_is_in(check.at, product)
	what := sprintf("its data: %s %s", [_word[check.bound], degrees.write(check.limit_c, degrees.like(line, check))])
]

_word := {"apply_min_c": "from", "apply_max_c": "up to"}
