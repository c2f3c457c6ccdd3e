# METADATA
# title: Covered with no inspection on record
# description: |
#   The log keeps a date of inspection for its rows, and this row is covered and has none. Nobody can say that the laps
#   were looked at before the cladding went on. It does not apply to logs that keep the date for some rows only, to
#   rows not covered yet, nor to rows that say that none is needed.
# custom:
#   id: sequence-cover-unseen
#   topic: sequence
#   severity: warning
#   reason: What was never looked at is trusted for decades; the log is the only witness once it is covered.
#   remedy: Find the inspector's record and its date, or open a part of the wall.
#   source: common practice
#   basis: common-practice
#   looks: across rows
#   example: "inspected: (empty), covered 15 May; every other row has both"
package sequence.cover_unseen

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["inspected", "cover"], message) if {
	some line in _covered
	line.dates.inspected.state == "missing"
	kept := _kept[_log(line)]
	kept.seen >= data.sequence.unseen.least_rows
	kept.seen >= kept.all * data.sequence.unseen.share
	message := naming.say("%s is covered on %s and has no date of inspection, which the other rows have", [
		naming.row(line),
		words.date(line.dates.cover.to),
	])
}

_covered := [line |
	some line in facts.live_lines
	line.dates.cover.state in data.sequence.order.dated
	line.dates.inspected
]

# _kept counts the covered rows of each log, and those that were inspected.
_kept := {log: {"all": count(rows), "seen": count(seen)} |
	some log in {_log(line) | some line in _covered}
	rows := [line | some line in _covered; _log(line) == log]
	seen := [row | some row in rows; row.dates.inspected.state in data.sequence.order.dated]
}

# Boards and joints of metal need no look where sheets do: rows are held against those of their own sort.
_log(line) := sprintf("%s %s", [line.role, line.table])
