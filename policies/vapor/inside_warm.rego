# METADATA
# title: Vapor barrier inside in a warm climate
# description: |
#   Polyethylene inside belongs to cold climates. Where winters are mild the film only stops drying: in a humid
#   summer outdoor vapor meets it on the cooled side, and within two such summers the gypsum behind it is spotted.
#   It does not apply to vinyl wall covering, nor to walls that already have a tight sheet outside, which are told
#   by other rules.
# custom:
#   id: vapor-inside-warm
#   topic: vapor
#   severity: warning
#   reason: Vapor drives inward in summer and condenses on the cool back of the film.
#   remedy: Leave the film out; paint is enough inside in this climate.
#   source: IRC R702.7 bars class I inside in zones 1 to 3
#   basis: source-read
#   example: "polyethylene behind the gypsum board in Houston"
package vapor.inside_warm

import data.lib.facts
import data.lib.finding
import data.lib.section
import data.lib.winter

findings contains finding.at(facts.lines_by_id[layer.line], ["material", "tag", layer.at.cell], message) if {
	winter.celsius >= data.vapor.climate.warm_c
	some one in section.all
	some i, layer in one.layers
	layer.family in data.vapor.barriers.inside_families
	not layer.family in data.vapor.barriers.vinyl.families
	layer.vapor == "I"
	not layer.line in section.judged_lines
	_is_outside(one, i)
	message := sprintf("%s lies on the room side of the insulation, where winters are mild (%s)", [
		layer.text,
		winter.written(winter.celsius),
	])
}

_is_outside(one, i) if {
	some layer in array.slice(one.layers, i + 1, count(one.layers))
	layer.insulates
}
