# METADATA
# title: Days in the open counted otherwise than the dates
# description: |
#   A column of the log counts the days from the installation of each row to its cover, and here it says other than
#   the two dates do. Either a date is a slip of the pen, or the count is, and whoever goes by the column alone looks
#   past a sheet that stood open too long. It applies where the column agrees with the dates of most rows. It does not
#   apply to a day that is counted at both ends or at neither, to a cover that is a span, nor to a cover before the
#   sheet, which is told by itself.
# custom:
#   id: data-days-miscounted
#   topic: data
#   severity: warning
#   reason: One of the three is wrong, and the limit in the sun is held against it.
#   remedy: Look up the daily reports, and put the dates or the count right.
#   source: the row itself, and the other rows of its column
#   basis: source-read
#   example: "set 3 Aug, covered 13 Oct, days open: 17"
#   looks: across rows
package data.days_miscounted

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(row.line, [row.cell, "install", "cover"], message) if {
	some row in _rows
	_is_off(row)
	_share[row.line.table] >= data.data.dates.counted.share
	message := naming.say("%s is counted as %s in the open, but its dates (%s to %s) make %s", [
		naming.row(row.line),
		words.days(row.said),
		words.date(row.span.from),
		words.date(row.span.to),
		words.days(row.span.last),
	])
}

# _rows are those that tell both dates to the day, and a count.
_rows := [{"line": line, "span": span, "said": figure.min, "cell": figure.at.cell} |
	some line in facts.live_lines
	figure := line.figures.planned_open_days
	is_number(figure.min)
	figure.min == figure.max
	line.dates.cover.state == "day"
	line.dates.install.state in {"day", "span"}
	span := line.spans.bare_days
	every days in [span.min, span.max] { days == span.last } # a span too, where the column counts from one end of it
]

_is_off(row) if abs(row.said - row.span.last) > data.data.dates.counted.tolerance_days

# _share is the part of the rows of a table whose count agrees with the dates, where there are enough of them.
_share := {table: share |
	some table in {row.line.table | some row in _rows}
	all := [row | some row in _rows; row.line.table == table]
	count(all) >= data.data.dates.counted.rows
	right := [row | some row in all; not _is_off(row)]
	share := count(right) / count(all)
}
