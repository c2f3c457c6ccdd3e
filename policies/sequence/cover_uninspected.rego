# METADATA
# title: Covered before it is inspected
# description: |
#   The row's date of inspection, test or sign-off lies after the day on which the work is covered, or its words put
#   the look after the cover ("inspector sees it once the brick is up"). What is behind insulation or cladding cannot
#   be looked at, pulled at or flooded any more, and the sign-off says nothing. The same day is fine: the look comes
#   first and the cover after it. It does not apply to rows without both dates, to a cover date before the work itself,
#   nor to a protection course that goes on with the membrane ahead of a flood test, unless the soil or paving over it
#   comes ahead of the test as well, nor to words of clips and ties, of openings, or of a test of the finished wall.
# custom:
#   id: sequence-cover-uninspected
#   topic: sequence
#   severity: error
#   reason: Covered work cannot be inspected; a lap or a hole that was missed is found years later, behind the cladding.
#   remedy: Hold the cover until the inspection, open a part of the wall, or correct the date that is wrong.
#   source: common practice
#   basis: common-practice
#   example: "Covered 20 Jun 2027, signed off 24 Jun 2027"
package sequence.cover_uninspected

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	span := _unseen(line)
	span.max < 0
	not _is_slip(line)
	not _is_of_opening(line)
	message := naming.say("%s is covered on %s, %s before its inspection on %s", [
		naming.row(line),
		words.date(span.to),
		words.days(0 - span.max),
		words.date(span.from),
	])
	found := finding.at(line, ["inspected", "cover", object.get(line.dates, ["inspected", "at", "cell"], "")], message)
}

# In words alone: "pull test after the boards are on".
findings contains found if {
	some line in sheet.lines
	some slot in data.sequence.looked.slots
	clause := _after_cover(line.texts[slot])[0]
	message := naming.say("%s is looked at only when it is covered (\"%s\")", [naming.row(line), trim_space(clause)])
	found := finding.at(line, [slot, "cover"], message)
}

_after_cover(text) := [clause |
	some clause in regex.split(`[;\n]|\.(\s|$)`, text)
	regex.match(data.sequence.looked.after, lower(clause))
	not regex.match(data.sequence.looked.unless, lower(clause))
]

# The cover date lies before the work itself: one date is wrong, and that is told.
_is_slip(line) if line.spans.bare_days.max < 0

_is_of_opening(line) if regex.match(data.sequence.order.of_opening, lower(line.dates.inspected.text))

# A protection course goes on with the membrane, and both are flooded together; what is laid over it comes later.
_unseen(line) := line.spans.unseen_last_days if {
	_is_protected(line)
} else := line.spans.unseen_days if {
	not _is_protected(line)
}

_is_protected(line) if {
	line.spans.bare_days.max == 0
	regex.match(data.sequence.order.flooded, lower(line.dates.inspected.text))
}

# Where what covers it is said to be the protection course, it may follow on the next day.
_is_protected(line) if {
	line.spans.bare_days.max in numbers.range(0, data.sequence.order.protected.days)
	regex.match(data.sequence.order.flooded, lower(line.dates.inspected.text))
	front := lower(object.get(line.texts, "front", ""))
	regex.match(data.sequence.order.protected.words, front)
	not regex.match(data.sequence.order.protected.unless, front)
}

_is_protected(line) if {
	line.spans.bare_days.max == 0
	facts.has_key(facts.main_items(line)[0], ["hot-applied"])
}
