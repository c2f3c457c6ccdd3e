# METADATA
# title: Cover before the sheet that it lies over
# description: |
#   One row says that it lies over a product, another row of the same detail or place says that this product is covered
#   with the first, and the dates stand the other way round: coping before its underlay, board before its membrane. What
#   lies under cannot come later, so the cover comes off again or the sheet is left out. It does not apply to dates that
#   overlap, to rows of other details, nor where another row of the product at that place comes in time.
# custom:
#   id: sequence-bed-after-cover
#   topic: sequence
#   severity: error
#   reason: What lies under another layer cannot be laid after it.
#   remedy: Ask for the right dates of both rows; if they stand, take the cover off and lay the sheet first.
#   source: the schedule itself
#   basis: source-read
#   looks: across rows
#   example: "Coping over UM-1, set 4 May; UM-1 at the same detail, covered with the coping: 11 May"
package sequence.bed_after_cover

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at_with(bed, ["install"], message, {"related": related}) if {
	some cover in _covers
	beds := _beds_of(cover)
	every other in beds { other.dates.install.from > cover.line.dates.install.to }
	some bed in beds
	message := naming.say("%s goes on %s, after %s over it (%s)", [
		naming.plain(facts.main_items(bed)[0]),
		words.date_range(bed.dates.install.from, bed.dates.install.to),
		facts.main_items(cover.line)[0].text,
		words.date_range(cover.line.dates.install.from, cover.line.dates.install.to),
	])
	related := [finding.related(cover.line, ["install"], "what lies over it")]
}

# Rows that say which product they lie over: {"line", "own", "over"}.
_covers := [{"line": line, "own": own.product, "over": bed.product} |
	some line in facts.live_lines
	line.dates.install.state in data.sequence.order.dated
	own := facts.main_items(line)[0]
	own.product != ""
	some bed in facts.items_in(line, ["substrate"])
	bed.product != ""
	bed.product != own.product
]

# The rows of that product at the same spot, which say that they are covered so.
_beds_of(cover) := [line |
	some line in _by_product[cover.over]
	line.table == cover.line.table
	line.group == cover.line.group
	_is_there(line, cover.line)
	some front in facts.items_in(line, ["front"])
	front.product == cover.own
]

_by_product := {product: lines |
	some product in {cover.over | some cover in _covers}
	lines := [line |
		some line in facts.live_lines
		line.dates.install.state in data.sequence.order.dated
		facts.main_items(line)[0].product == product
	]
}

# One place, or one detail where most words of the two places are the same ("roof 2 curb top", "roof 2 curb cap") and
# all that are numbered.
_is_there(a, b) if {
	a.place != ""
	lower(a.place) == lower(b.place)
}

_is_there(a, b) if {
	some detail in a.refs
	regex.match(data.sequence.spot.detail, detail)
	detail in b.refs
	left := _words(a.place)
	right := _words(b.place)
	count(left & right) >= max([count(left), count(right)]) * data.sequence.spot.share
	every word in (left | right) - (left & right) { not regex.match(`[0-9]`, word) }
}

_words(place) := {word | some word in regex.split(`[\s;,]+`, lower(place)); word != ""}
