# METADATA
# title: Insulation bare in the sun
# description: |
#   Foam boards and sprayed foam turn to dust at the surface in sunlight: polystyrene yellows within weeks, shrinks and
#   curls, and what is stuck to its face later comes off with the dust. The days that the board's data states count, of
#   whatever insulation; without them polystyrene and polyurethane that lie bare for longer than such boards usually
#   may are asked about, and foam of any kind that a row leaves bare for a season in words. It does not apply to wool
#   and glass without days of their own, to indoor work, nor to boards that the row says are kept under a cover
#   meanwhile; the last day allowed is within it.
# custom:
#   id: exposure-foam-bare
#   topic: exposure
#   severity: warning
#   reason: Sunlight breaks plastic foam at the surface; it turns to dust, shrinks and curls.
#   remedy: Cover the boards in their days, keep an opaque sheet over them, or place them later.
#   source: the product's data; else common practice for foam boards (weeks, not a season)
#   basis: from-memory
#   example: "EPS on the plinth, set 3 May, backfilled 20 Aug"
package exposure.foam_bare

import data.lib.bare
import data.lib.facts
import data.lib.finding
import data.lib.mended
import data.lib.naming
import data.lib.stated
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	line.role == "insulation"
	span := line.spans.bare_days
	not _is_hidden(line)
	row := {"line": line, "span": span, "item": facts.main_items(line)[0]}
	limit := _limit(row)
	level := bare.level(row, limit.days)
	message := naming.say("%s %s; %s %s%s", [
		naming.plain(row.item),
		bare.stays(row),
		limit.says,
		words.days(limit.days),
		bare.temporary(line),
	])
	found := finding.at_with(line, ["material", "tag", "install", "cover"], message, {
		"severity": _severity(level, limit),
		"related": array.concat(bare.related(line), limit.related),
		"keys": {"days": span.last, "allowed": limit.days},
	})
}

# In words: "uncovered till the trims come, maybe next summer", of foam from a can as well.
findings contains found if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	facts.has_key(item, _foams)
	not _is_hidden(line)
	not _is_counted(line)
	told := mended.open(line, "bare_for_long")[0]
	message := naming.say("%s lies bare for long (%s), and foam turns to dust in the sun", [
		naming.plain(item),
		words.quoted(told.text),
	])
	found := finding.at(line, ["material", "tag", told.slot, told.at.cell], message)
}

_foams := [key | some kind in data.exposure.foam.list; some key in kind.keys]

_is_counted(line) if {
	line.role == "insulation"
	line.spans.bare_days
}

_limit(row) := {"days": own.days, "says": says, "related": related, "is_stated": true} if {
	own := bare.own(row)
	says := sprintf("%s allows", [own.by])
	related := [finding.related_product(own.told.by, ["exposure_days"], "its days open to the sun") |
		own.told.from == "product"
	]
} else := {"days": usual.days, "says": says, "related": [], "is_stated": false} if {
	not stated.figure(row.line, "exposure_days")
	usual := [kind | some kind in data.exposure.foam.list; facts.has_key(row.item, kind.keys)][0]
	says := sprintf("no limit is given, and %s usually may", [usual.name])
}

_severity(level, limit) := level if {
	limit.is_stated
} else := bare.softer(level)

_is_hidden(line) if facts.said(line, "indoors")

_is_hidden(line) if facts.said(line, "studs_filled")

_is_hidden(line) if {
	some slot in ["substrate", "place"]
	regex.match(data.exposure.foam.inside, object.get(line.texts, slot, ""))
}
