# METADATA
# title: Days open to the sun
# description: |
#   The days that the sheet of a row stays bare, held against a limit, and how they are told. On the limit is within it.
package lib.bare

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.sheet
import data.lib.stated
import data.lib.words

# rows are the lines of sheets with a count of bare days, each with its first own material.
rows := [{"line": line, "span": span, "item": item} |
	some line in sheet.lines
	span := line.spans.bare_days
	span.min >= 0
	item := facts.main_items(line)[0]
]

# held holds every row against its limits, for a report to draw: days of each limit, who gives it, and how bad it is
# ("" within it).
held := [{
	"line": row.line.id,
	"text": row.item.text,
	"min": row.span.min,
	"max": row.span.max,
	"from": row.span.from,
	"to": row.span.to,
	"limits": _limits(row),
} |
	some row in rows
]

_limits(row) := array.concat(
	array.concat(
		[{"days": told.days, "by": told.by, "level": _level(row, told.days)} | told := own(row)],
		[{"days": limit.max, "by": "the notes", "level": _level(row, limit.max)} | limit := noted(row)],
	),
	[{"days": kind.days, "by": sprintf("usual for %s", [kind.name]), "level": softer(_level(row, kind.days))} |
		kind := usual(row)
	],
)

_level(row, days) := level(row, days)

default _level(_, _) := ""

# own is the limit in days that the row or its product's data states, or that a maker's letter raises it to: {"days",
# "told", "by": whose it is}; undefined where neither row nor data states one.
own(row) := _raised(row, told) if {
	told := stated.figure(row.line, "exposure_days")
	not told.figure.no_limit
}

_raised(row, told) := {"days": letter.max, "told": told, "by": "the maker's letter"} if {
	letter := limits.raised("exposure_days", row.line, row.item.keys)
	letter.max > measure.high(told.figure)
} else := {"days": days, "told": told, "by": "the maker's letter"} if {
	days := max(_own_letters(row.line))
	days > measure.high(told.figure)
} else := {"days": measure.high(told.figure), "told": told, "by": stated.whose(told)}

# The row itself may cite the letter and its days: "maker's letter of 3 May, up to 120 d". One that is only asked for
# allows nothing.
_own_letters(line) := [to_number(said[1]) |
	some text in line.texts
	some said in regex.find_all_string_submatch_n(data.exposure.letter.days, lower(text), -1)
	not regex.match(data.exposure.letter.pending, lower(text))
]

# noted is the lowest limit of the project's notes.
noted(row) := limits.lowest_max(_noted(row))

_noted(row) := [limit |
	some limit in limits.limits_for("exposure_days", row.line, row.item.keys, row.line.role)
	not _gives_way(row, limit)
]

_gives_way(row, limit) if {
	limits.yields(limit)
	stated.figure(row.line, "exposure_days")
}

# usual is what sheets of the kind usually may, where neither row, data nor notes give a limit.
usual(row) := [kind | some kind in data.exposure.usual.list; facts.has_key(row.item, kind.keys)][0] if {
	not stated.figure(row.line, "exposure_days")
	not _is_noted(row)
	row.item.class in data.exposure.usual.classes
	not _may_stay(row.item)
}

_may_stay(item) if facts.said(facts.product_of(item), "may_stay_exposed")

_is_noted(row) if {
	some limit in _noted(row)
	limit.max != null
}

# level is error where even the shortest count is over the limit; a warning where what is laid and covered last is, or
# what is laid and covered first; a note where only what is laid first and covered last is; a temporary cover told in
# the row makes it a note.
level(row, days) := "note" if {
	row.span.max > days
	facts.said(row.line, "covered_otherwise")
} else := "error" if {
	row.span.min > days
} else := "warning" if {
	max([row.span.last, _first(row.span)]) > days
} else := "note" if {
	row.span.max > days
}

# From the first day of the installation to the first of the cover.
_first(span) := (span.min + span.max) - span.last

# softer is at most a warning, for figures that nobody stated.
softer("error") := "warning"

softer(level) := level if level != "error"

# stays is "stays bare 77 days (13 Apr to 29 Jun 2026)", with a range where a date is one.
stays(row) := sprintf("stays bare %s%s", [_days(row.span), _dates(row.span)])

_dates(span) := sprintf(" (%s)", [words.span(span)]) if {
	span.from != ""
} else := ""

_days(span) := words.days(span.min) if {
	span.min == span.max
} else := sprintf("%d to %d days", [span.min, span.max])

# related names the row that the cover date was taken from.
related(line) := [finding.related(other, ["install"], "its date is the cover date") |
	line.dates.cover.state == "implied"
	other := facts.lines_by_id[line.dates.cover.ref]
]

# temporary tells that a temporary cover is told.
temporary(line) := "; the row tells of a temporary cover, see that it is logged by date" if {
	facts.said(line, "covered_otherwise")
} else := ""
