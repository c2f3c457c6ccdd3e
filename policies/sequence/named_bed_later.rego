# METADATA
# title: Work before the row that it stands on
# description: |
#   A row says that it sits in or on the work of another row and names it ("set in the pans of item 12"), and that
#   other row has the later date. A window that stands before its pan has none under it. It does not apply to rows
#   on the same day, to dates that overlap, nor where the words name no row of the sheet.
# custom:
#   id: sequence-named-bed-later
#   topic: sequence
#   severity: error
#   reason: What stands on other work cannot come before it; behind or under it nothing can be laid.
#   remedy: Ask for the right dates of both rows; if they stand, take the unit out and lay what belongs under it.
#   source: the schedule itself
#   basis: source-read
#   looks: across rows
#   example: "Window set 3 Jun, sits in the pan of item 12; item 12: 9 Jun"
package sequence.named_bed_later

import data.lib.facts
import data.lib.finding
import data.lib.words

findings contains finding.at_with(line, ["install", "remark"], message, {"related": related}) if {
	some line in facts.live_lines
	line.dates.install.state in data.sequence.order.dated
	bed := _named(line)
	bed.dates.install.from > line.dates.install.to
	message := sprintf("this is set on %s, before %s that it stands on (%s)", [
		words.date_range(line.dates.install.from, line.dates.install.to),
		bed.mark,
		words.date_range(bed.dates.install.from, bed.dates.install.to),
	])
	related := [finding.related(bed, ["install"], "what it stands on")]
}

_named(line) := beds[0] if {
	beds := _by_mark[_keys[line.id]]
	count(beds) == 1
	beds[0].id != line.id
}

# Only rows that others name are kept; there are few.
_by_mark := {key: beds |
	some key in {key | some key in _keys}
	beds := [one | some one in facts.live_lines; _key(one.sheet, one.mark) == key]
}

# _keys gives by its ID the row that a row says it stands on.
_keys := {line.id: key |
	some line in facts.live_lines
	found := regex.find_all_string_submatch_n(data.sequence.named.stands_on, line.texts.remark, 1)
	key := _key(line.sheet, found[0][1])
}

_key(sheet, mark) := sprintf("%s|%s", [sheet, lower(trim(mark, " .,;"))])
