# METADATA
# title: Sheet still open on the day of the log
# description: |
#   The log tells up to which day it is kept, and that the sheet was not covered by then: the sun counts on, and the
#   days are already more than its data or the notes allow. A cover date left empty is asked about, since it may only
#   not be filled in. It does not apply where nothing tells the day of the log, nor to the last day allowed.
# custom:
#   id: exposure-still-open
#   topic: exposure
#   severity: error
#   reason: Sunlight breaks the face of the sheet, and the maker's data no longer holds.
#   remedy: Cover the sheet now, and have its maker look at what stood open before it is covered.
#   source: the product's data or the project's notes, and the day of the log
#   basis: source-read
#   example: "set 2 Jun, covered: not yet; log kept to 30 Sep; its data allows 90 days"
package exposure.still_open

import data.lib.bare
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	span := line.spans.open_days
	not _is_excused(line)
	row := {"line": line, "span": span, "item": facts.main_items(line)[0]}
	limit := _limit(row)
	span.min > limit.days
	message := naming.say("%s is still open on %s, %s after it was set; %s %s", [
		naming.plain(row.item),
		words.date(span.to),
		words.days(span.min),
		limit.says,
		words.days(limit.days),
	])
	found := finding.at_with(line, ["material", "tag", "install", "cover"], message, {
		"severity": _severity(line),
		"related": limit.related,
		"keys": {"days": span.last, "allowed": limit.days},
	})
}

_limit(row) := {"days": own.days, "says": says, "related": related} if {
	own := bare.own(row)
	says := sprintf("%s allows", [own.by])
	related := [finding.related_product(own.told.by, ["exposure_days"], "its days open to the sun") |
		own.told.from == "product"
	]
} else := {"days": limit.max, "says": "the notes allow", "related": [note]} if {
	limit := bare.noted(row)
	note := finding.related_address(limit.at, limit.text)
}

_severity(line) := "warning" if trim_space(line.texts.cover) == ""

_severity(line) := "error" if trim_space(line.texts.cover) != ""

_is_excused(line) if {
	some signal in data.exposure.cover.excused
	facts.said(line, signal)
}

_is_excused(line) if facts.said(line, "covered_otherwise")
