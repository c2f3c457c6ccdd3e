# METADATA
# title: Sheet that stays in view for good
# description: |
#   The row says that the sheet is never covered, or leaves its cover date open. A sheet with a limit in days is
#   not a finish: after two years it is chalked and cracked and lets go at its edges. It does not apply to sheets
#   with a metal face and those whose data lets them stay exposed, nor to a row with a day of its cover; words that
#   speak of another material in the same clause are not heard.
# custom:
#   id: exposure-left-open
#   topic: exposure
#   severity: error
#   reason: A sheet with a limit in days breaks down in daylight.
#   remedy: Cover it with metal or cladding within its days, or take a sheet that may stay exposed.
#   source: the product's data; else common practice
#   basis: common-practice
#   example: "Cover date: stays open; the data of FM-1 allows 90 days"
package exposure.left_open

import data.lib.daylight
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	daylight.left_open(line)
	not daylight.runs_past(line)
	not facts.said(line, "covered_otherwise")
	not _is_dated(line)
	shy := daylight.shy(line)
	told := _told(line)
	message := naming.say("%s stays in daylight for good (%s); %s", [
		naming.plain(shy.item),
		words.quoted(told.text),
		shy.why,
	])
	found := finding.at_with(line, array.concat(["material", "tag"], told.slots), message, {
		"severity": shy.level,
		"related": [finding.related_product(by, ["exposure_days"], shy.why) | some by in shy.by],
	})
}

_told(line) := {"text": line.dates.cover.text, "slots": ["cover"]} if {
	line.dates.cover.state == "open"
} else := {"text": said.text, "slots": [said.slot, said.at.cell]} if {
	said := [s | some s in line.signals; s.id == "stays_exposed"; not s.no][0]
}

# "Left open for the crane" beside a day of the cover is no stay for good: its days are counted.
_is_dated(line) if {
	line.dates.cover.state == "day"
}
