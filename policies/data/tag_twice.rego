# METADATA
# title: One tag, two products
# description: |
#   The product data has the tag more than once, with another material or other limits, so that each reader may
#   pick another. What is bought and what was checked are then two things. The message names what differs; rows
#   that use the tag are named beside it. It does not apply to a row repeated word for word, which does no harm.
# custom:
#   id: data-tag-twice
#   topic: data
#   severity: error
#   reason: A tag that stands for two products buys one and builds the other.
#   remedy: Give each product a tag of its own, and correct the rows.
#   source: the workbook's own product data
#   basis: source-read
#   example: "BT-1 is a butyl tape in one row and an asphaltic tape in another"
#   looks: across rows
package data.tag_twice

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.words

findings contains finding.for_product(again, ["tag", "material", "type"], message, {"related": related}) if {
	some i, again in input.products
	again.repeats
	first := [p | some p in array.slice(input.products, 0, i); p.tag == again.tag][0]
	differences := array.concat(_families(first, again), _figures(first, again))
	count(differences) > 0
	message := sprintf("%s stands for two products: %s", [again.tag, words.list(differences)])
	other := finding.related_product(first, ["tag", "material", "type"], "the other one")
	related := array.concat([other], _users(again.tag))
}

_families(a, b) := [sprintf("%s and %s", [lower(a.name), lower(b.name)])] if {
	a.family != b.family
	a.name != ""
	b.name != ""
	a.name != b.name
} else := [sprintf("%s and %s", [a.family, b.family])] if {
	a.family != b.family
	a.family != ""
	b.family != ""
} else := []

_figures(a, b) := [sprintf("%s %s and %s", [data.lib.measures.names[kind], x.text, y.text]) |
	some kind in data.data.tags.figures
	x := a.figures[kind]
	y := b.figures[kind]
	abs(measure.low(x) - measure.low(y)) > abs(measure.low(x)) * data.data.tags.same_share
]

_users(tag) := [finding.related(line, [items[0].at.cell], "uses the tag") |
	some line in facts.live_lines
	items := [item | some item in line.items; item.tag == tag; facts.is_there(item)]
	count(items) > 0
]
