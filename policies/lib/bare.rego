# METADATA
# title: Days open to the sun
# description: |
#   The days that the sheet of a row stays bare, held against a limit, and how they are told. On the limit is within it.
package lib.bare

import data.lib.facts
import data.lib.finding
import data.lib.sheet
import data.lib.words

# rows are the lines of sheets with a count of bare days, each with its first own material.
rows := [{"line": line, "span": span, "item": item} |
	some line in sheet.lines
	span := line.spans.bare_days
	span.min >= 0
	item := facts.main_items(line)[0]
]

# level is error where even the shortest count is over the limit, warning where only the long end is; a temporary
# cover told in the row makes it a note.
level(row, days) := "note" if {
	row.span.max > days
	facts.said(row.line, "covered_otherwise")
} else := "error" if {
	row.span.min > days
} else := "warning" if {
	row.span.max > days
}

# softer is at most a warning, for figures that nobody stated.
softer("error") := "warning"

softer(level) := level if level != "error"

# stays is "stays bare 77 days (13 Apr to 29 Jun 2026)", with a range where a date is one.
stays(row) := sprintf("stays bare %s (%s)", [_days(row.span), words.span(row.span)])

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
