# METADATA
# title: Vapor class inside that the zone does not have
# description: |
#   The code's table of retarders bars class I inside in zones 1 to 3 and class II in zones 1 and 2: there the vapor
#   comes from outside most of the year, and a kraft face or film on the room side is where it stops. After two
#   humid summers the back of the gypsum is spotted. The figures are second-hand, so the row is said to differ and
#   the adopted book decides. It does not apply to vinyl wall covering and to film that another rule tells of, to
#   class II in zone 3, to roofs, nor where neither notes nor station tell the zone.
# custom:
#   id: vapor-class-zone
#   topic: vapor
#   severity: note
#   reason: In a warm zone vapor drives inward, and a tight layer on the room side keeps it in the wall.
#   remedy: Leave the retarder out or take unfaced insulation; check the table of the adopted code.
#   source: 2021 IRC table R702.7(2) and IBC 1404.3, second-hand
#   basis: source-read
#   example: "Climate zone 2A: kraft-faced batts behind the gypsum board"
package vapor.class_zone

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.section
import data.lib.zone
import data.vapor.inside_warm

findings contains finding.at_with(facts.lines_by_id[layer.line], slots, message, extra) if {
	zone.is_of_code
	some one in section.walls
	some i, layer in one.layers
	layer.family in _kinds
	not layer.family in data.vapor.barriers.vinyl.families
	zone.here.zone in data.vapor.ratio.barred[layer.vapor]
	_has_insulation(one, i)
	not layer.line in section.judged_lines
	not layer.line in _told
	slots := ["material", "tag", layer.at.cell]
	message := naming.say("%s is class %s on the room side in %s, unlike the code's table, which has none there", [
		layer.text,
		layer.vapor,
		zone.here.says,
	])
	extra := {
		"severity": _severity,
		"related": [finding.related_address(zone.here.at, zone.here.text) | zone.here.stated],
	}
}

# Batts with a face of kraft or foil are retarder and insulation in one.
_kinds := {family | some family in array.concat(data.vapor.barriers.inside_families, data.vapor.ratio.faced_families)}

_has_insulation(one, i) if {
	some layer in array.slice(one.layers, i, count(one.layers))
	layer.insulates
}

_told := {found.line | some found in inside_warm.findings}

_severity := "warning" if zone.here.stated

_severity := "note" if not zone.here.stated
