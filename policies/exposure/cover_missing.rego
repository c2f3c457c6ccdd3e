# METADATA
# title: Cover date missing
# description: |
#   Sheets chalk and crack in the sun, and the damage is out of sight when it starts to leak in its second or
#   third year. The other sheets of the table have a cover date and this one has none, although its data limits
#   the days: nothing can be counted. A cover that is said to be open ("TBD") is asked about, and so is the one cell
#   left empty in a long column. It does not apply to a dash, a row by others that does not say that their date is open,
#   a row whose sheet may stay exposed, and one that a log calls open, whose days are counted to the day of the log.
# custom:
#   id: exposure-cover-missing
#   topic: exposure
#   severity: note
#   reason: Without the cover date nobody counts the days, and the sheet waits for a trade that is late.
#   remedy: Fill in the date by which the sheet is covered.
#   source: common practice
#   basis: common-practice
#   example: "FM-1 set on 2 Jun, covered: (empty); its data allows 90 days"
#   looks: across rows
package exposure.cover_missing

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.stated
import data.lib.words

findings contains found if {
	some line in sheet.lines
	line.dates.cover.state in data.exposure.cover.empty
	line.dates.install.from != ""
	_share[line.table] >= data.exposure.cover.most_of_rows
	not _is_excused(line)
	told := stated.figure(line, "exposure_days")
	not told.figure.no_limit
	message := naming.say("No cover date for %s, set on %s; %s allows %s in the sun", [
		naming.plain(told.item),
		words.date(line.dates.install.from),
		stated.whose(told),
		words.days(measure.high(told.figure)),
	])
	found := finding.at_with(line, ["cover"], message, {"severity": _severity(line)})
}

# A cell left empty may only not be filled in, unless the notes ask for the date or nearly all others have one; "TBD"
# says that nobody knows.
_severity(line) := "warning" if {
	line.dates.cover.state == "unknown"
	trim_space(object.get(line.dates.cover, "text", "")) != ""
} else := "warning" if {
	limits.limits_for("cover_date", line, [], line.role)[0]
} else := "warning" if {
	_share_of_limited[line.table] >= data.exposure.cover.alone.share
	count([other | some other in sheet.lines; other.table == line.table]) >= data.exposure.cover.alone.rows
} else := "note"

_is_excused(line) if {
	line.spans.open_days.min >= 0
	trim_space(line.texts.cover) != ""
}

_is_excused(line) if {
	some signal in data.exposure.cover.excused
	facts.said(line, signal)
	not _waits_for_backfill(line, signal)
	not _is_open(line, signal)
}

# Others cover it, and the row says that nobody knows when.
_is_open(line, "by_others") if regex.match(data.exposure.cover.day_open, lower(object.get(line.texts, "remark", "")))

# What is backfilled is mostly covered the same week and has no date; one that is said to be open has none to come.
_waits_for_backfill(line, "below_grade") if _severity(line) == "warning"

# _share is the part of the sheets of a table that have a cover date.
_share := {table: share |
	some table in {line.table | some line in sheet.lines}
	all := [line.id | some line in sheet.lines; line.table == table]
	dated := [line.id | some line in sheet.lines; line.table == table; _is_dated(line)]
	share := count(dated) / count(all)
}

# What may lie in the sun without limit needs no date, and its "n/a" is no cell left empty.
_share_of_limited := {table: share |
	some table in {line.table | some line in sheet.lines}
	all := [line | some line in sheet.lines; line.table == table; not _needs_none(line)]
	dated := [line.id | some line in all; _is_dated(line)]
	share := count(dated) / count(all)
}

_needs_none(line) if {
	line.dates.cover.state == "none"
	stated.figure(line, "exposure_days").figure.no_limit
}

_is_dated(line) if line.dates.cover.state in data.exposure.cover.dated
