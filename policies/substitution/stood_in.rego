# METADATA
# title: Tight sheet in place of a permeable one
# description: |
#   A remark says that another sheet came in place of the row's own, and the one that came is tight to vapor where the
#   one that the row names lets it through. The wall was drawn to dry outward through it. It does not apply where a
#   limit of the notes tells it already, nor to a change that the designer has answered.
# custom:
#   id: substitution-stood-in
#   topic: substitution
#   severity: error
#   reason: A tight sheet on the outside of a wall that was drawn to dry outward keeps its sheathing wet.
#   remedy: Take it off and put on the sheet that was specified, or have the wall's moisture balance looked at again.
#   source: common practice of enclosure design
#   basis: common-practice
#   example: "VP sheet out of stock, SBS sheet furnished in lieu"
#   looks: across rows
package substitution.stood_in

import data.lib.facts
import data.lib.finding
import data.lib.measure

# The row names it, and another came in its place.
findings contains found if {
	some line in facts.live_lines
	some was in line.items
	was.relation == "instead_of"
	was.polarity == "no"
	was.slot in {"material", "tag"}
	now := facts.main_items(line)[0]
	before := facts.product_of(was).figures.vapor_ng
	after := facts.product_of(now).figures.vapor_ng
	_closes(before, after)
	not facts.said(line, "change_accepted")
	not line.id in _by_limit
	message := sprintf("%s came in place of %s and lets %s of vapor through, where the row's own lets %s", [
		now.text,
		was.text,
		measure.as_said("vapor", after),
		measure.as_said("vapor", before),
	])
	found := finding.at_with(line, ["material", now.at.cell], message, {"related": [
		finding.related_product(facts.product_of(now), ["vapor"], "its data"),
		finding.related_product(facts.product_of(was), ["vapor"], "that of the row's own"),
	]})
}

_closes(before, after) if {
	measure.is_sound(before)
	measure.is_sound(after)
	measure.low(before) >= data.substitution.vapor.permeable_min_ng
	measure.high(after) < data.substitution.vapor.permeable_min_ng
	measure.high(after) * data.substitution.vapor.factor < measure.low(before)
}

_by_limit := {found.line | some found in data.performance.vapor_limit.findings}
