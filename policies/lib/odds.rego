# METADATA
# title: Season odds
# description: |
#   Which temperature limits of a row the season breaks, and how badly. Heat and a tent end the question; mid-day work
#   is held against the days that have a usable spell; shade and an early start count as colder.
package lib.odds

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.words

# cold is the worst of the checks of some roles that the cold breaks: {"check", "level", "weight"}; undefined without.
cold(line, window, roles) := worst if {
	not is_heated(line)
	broken := [b |
		some check in window.checks
		check.bound == "apply_min_c"
		check.role in roles
		level := _level(line, check)
		level != "none"
		b := {"check": check, "level": level, "weight": _weight(line, check)}
	]
	top := max([b.weight | some b in broken])
	worst := [b | some b in broken; b.weight == top][0]
}

# sheet is cold for the row's own sheet where its limit is stated or its grade is named.
sheet(line, window) := found if {
	found := cold(line, window, data.temperature.roles.sheet)
	is_graded(found.check)
}

# primer is cold for the primer of the row.
primer(line, window) := cold(line, window, ["primer"])

# is_graded: the workbook says how cold the material may be put on, by a figure or by the name of a grade whose usual
# figure was taken.
is_graded(check) if check.stated

is_graded(check) if facts.has_key(check, ["grade-standard"])

is_graded(check) if {
	facts.has_key(check, data.temperature.grade_keys)
	check.limit_c < 0
}

# is_heated: the work is said to be heated, for the row or the whole job, and nothing denies it.
is_heated(line) if {
	facts.said(line, "heated")
	not facts.said(line, "unheated")
}

is_heated(line) if {
	_project_heats
	not facts.denied(line, "heated")
	not facts.said(line, "unheated")
}

# Heated offices are no heated work: the notes must tell of a tent or of heat brought for the work.
_project_heats if {
	facts.project_said("heated")
	some signal in input.project.signals
	signal.id == "heated"
	regex.match(data.temperature.cold.work_heat, lower(signal.text))
}

# how words the odds of a check: "on 19 Jan 2027 in Milwaukee the air is below that in 90% of working hours".
how(line, window, check, that) := sprintf("%s%s the air is below %s in %s of working hours", [
	when(window),
	where,
	that,
	words.percent(check.share_below),
]) if {
	not _is_mid_day(line)
} else := sprintf("%s%s only %s of days have four hours running at or above %s", [
	when(window),
	where,
	words.percent(check.days_usable),
	that,
])

# when is "on 19 Jan 2027" or "from 12 Jan to 23 Jan 2027".
when(window) := sprintf("on %s", [words.date(window.from)]) if {
	window.from == window.to
} else := sprintf("from %s", [words.date_range(window.from, window.to)])

# where is " in Milwaukee", or nothing.
where := sprintf(" in %s", [place.text]) if {
	place := input.project.place
	place.text != ""
	count(place.text) <= 40
} else := sprintf(" in %s", [input.project.place.station]) if {
	input.project.place.station != ""
} else := ""

# suits names the mildest usual grade for the window that is colder than the limit: "; the low-temperature grade (from
# 20 °F) would suit", or that only heat helps.
suits(window, check, like) := sprintf("; the %s (from %s) would suit", [best.name, from]) if {
	best := [g |
		some g in window.grades
		g.limit_c < check.limit_c
		g.share_below <= data.temperature.suits.share_below
	][0]
	from := degrees.write(best.limit_c, like)
} else := "; no usual grade suits, it takes a heated enclosure" if {
	count(window.grades) > 0
} else := ""

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

# slots are the cells of checks and of their materials in the row, the date and the shelter.
slots(line, checks) := array.concat(
	[at.cell | some check in checks; some at in _places(line, check); _is_in(at, line)],
	["install", "shelter"],
)

_places(line, check) := array.concat([check.at], [item.at | some item in line.items; item.id == check.item])

_is_in(at, row) if {
	at.sheet == row.sheet
	at.row == row.row
}

# related points at the product data that states the limits.
related(line, checks) := [finding.related_product(product, [check.at.cell], what) |
	some check in checks
	check.stated
	product := facts.product_of(check)
	_is_in(check.at, product)
	what := sprintf("its data: %s %s", [_word[check.bound], degrees.write(check.limit_c, degrees.like(line, check))])
]

_word := {"apply_min_c": "from", "apply_max_c": "up to"}

# A usual figure is asked about; a reading of the wall before work is one step milder.
_level(line, check) := "none" if {
	_is_checked(line)
	_raw(line, check) == "warning"
} else := "warning" if {
	_raw(line, check) == "error"
	_is_soft(line, check)
} else := _raw(line, check)

_is_soft(line, _) if _is_checked(line)

_is_soft(_, check) if not check.stated

_is_checked(line) if facts.said(line, "surface_checked")

_raw(line, check) := "error" if {
	_weight(line, check) >= _band(check).error
	check.days_usable <= data.temperature.cold.usable_days
} else := "warning" if {
	_weight(line, check) >= _band(check).warning
} else := "none"

_band(check) := [band | some band in data.temperature.cold.bands; check.limit_c > band.above_c][0]

_weight(line, check) := 1 - check.days_usable if {
	_is_mid_day(line)
} else := min([1, check.share_below + data.temperature.cold.early_share]) if {
	some signal in ["morning_work", "shaded"]
	facts.said(line, signal)
} else := check.share_below

_is_mid_day(line) if facts.said(line, "mid_day")
