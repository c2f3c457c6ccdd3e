# METADATA
# title: Sheet behind a cover that lets daylight through
# description: |
#   A perforated screen, slats or cladding with open joints keep the rain off in part, and the sun not at all: the
#   days of the sheet go on to count behind them. In the third summer the sheet is chalked along every hole, and the
#   screen must come down to reach it. It does not apply to sheets whose data lets them stay exposed, nor where the
#   row puts insulation or board between the two and does not say that the sheet is seen all the same.
# custom:
#   id: exposure-open-cover
#   topic: exposure
#   severity: error
#   reason: Daylight through the openings breaks down a sheet with a limit in days.
#   remedy: Put a closed cover or insulation over the sheet, or take one whose data allows it behind open joints.
#   source: makers' limits for sheets behind open-joint cladding; common practice
#   basis: common-practice
#   example: "FM-1 behind slatted screen, 30 % open; the data of FM-1 allows 90 days"
package exposure.open_cover

import data.lib.daylight
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	said := _said(line)
	not daylight.left_open(line)
	shy := daylight.shy(line)
	message := naming.say("%s stays in daylight behind its cover (%s); %s", [
		naming.plain(shy.item),
		words.quoted(said.text),
		shy.why,
	])
	found := finding.at_with(line, ["material", "tag", said.slot, said.at.cell], message, {
		"severity": shy.level,
		"related": [finding.related_product(by, ["exposure_days"], shy.why) | some by in shy.by],
	})
}

# What the row says of its sheet comes before what it says of the cover.
_said(line) := [s |
	some s in line.signals
	s.id == "shows_through"
	facts.said(line, "shows_through")
][0]

_said(line) := said if {
	not facts.said(line, "shows_through")
	said := [s |
		some s in line.signals
		s.id == "open_cover"
		s.slot in data.exposure.light.cover_slots
		facts.said(line, "open_cover")
	][0]
	not _is_closed_behind(line, said)
}

# What lies between the sheet and its open cover: "wool and perforated screen".
_is_closed_behind(line, said) if {
	some item in line.items
	item.slot in data.exposure.light.cover_slots
	item.class in data.exposure.light.closed_classes
	facts.is_there(item)
	not _is_the_cover(item, said)
}

_is_the_cover(item, said) if {
	item.at == said.at
	"open_cover" in item.signals
	not item.class in data.exposure.light.always_closed
}
