# METADATA
# title: Work before the row that it stands on
# description: |
#   A row says that it sits in, on or over the work of another row, or that it follows it, and names it ("set in the
#   pans of item 12", "over field sheet C-14", "sheet (N-07)" for its bed, "after B-09"), and that other row has the
#   later date. A window that stands before its pan has none under it, and wool that is up before its sheet hides bare
#   sheathing. It does not apply to rows on the same day, to dates that overlap, nor where the words name no row of the
#   sheet or tell that the other comes later and slips under.
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

findings contains finding.at_with(line, ["install", bed.slot], message, {"related": related}) if {
	some line in facts.live_lines
	bed := _named(line)
	bed.line.dates.install.from > line.dates.install.to
	message := sprintf("this is set on %s, before %s %s (%s)", [
		words.date_range(line.dates.install.from, line.dates.install.to),
		bed.line.mark,
		bed.says,
		words.date_range(bed.line.dates.install.from, bed.line.dates.install.to),
	])
	related := [finding.related(bed.line, ["install"], _whats[bed.says])]
}

_whats := {
	"that it stands on": "what it stands on",
	"that it lies over": "what lies under it",
	"that it follows": "what comes before it",
}

# The first row that the line names so, where only one has that mark.
_named(line) := [object.union(told, {"line": beds[0]}) |
	some told in _told[line.id]
	beds := _by_mark[told.key]
	count(beds) == 1
	beds[0].id != line.id
][0]

# Only rows that others name are kept; there are few.
_by_mark := {key: beds |
	some key in {told.key | some list in _told; some told in list}
	beds := [one | some one in facts.live_lines; _key(one.sheet, one.mark) == key]
}

# _told gives by its ID what a row says that it stands on, lies over or follows: {"key", "slot", "says"}.
_told := {line.id: list |
	some line in facts.live_lines
	line.dates.install.state in data.sequence.order.dated
	marks := {slot: marks | some slot in _slots; marks := _marks(line.texts[slot]); count(marks) > 0}
	list := array.concat(_on(line), [told |
		count(marks) > 0
		some i, way in data.sequence.named.ways
		some slot in way.slots
		mark := marks[slot][i]
		told := {"key": _key(line.sheet, mark), "slot": slot, "says": way.says}
	])
	count(list) > 0
}

_slots := {slot | some way in data.sequence.named.ways; some slot in way.slots}

# _marks are the marks that a text names, by the ways to say it. The same words stand in many rows.
_marks(text) := {i: mark | some i, way in data.sequence.named.ways; mark := _marked(way.like, text)} if {
	not regex.match(data.sequence.named.unless, lower(text))
}

_on(line) := [{"key": _key(line.sheet, mark), "slot": "remark", "says": "that it stands on"}] if {
	mark := _stands_on(line.texts.remark)
} else := []

_stands_on(text) := _marked(data.sequence.named.stands_on, text)

# A figure that a measure follows is that of an age or a size: "concrete over 28 d".
_marked(like, text) := found[1] if {
	found := regex.find_all_string_submatch_n(concat("", [like, data.sequence.named.measure]), text, 1)[0]
	found[2] == ""
}

_key(sheet, mark) := sprintf("%s|%s", [sheet, lower(trim(mark, " .,;"))])
