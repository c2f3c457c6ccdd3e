# METADATA
# title: Vinyl wall covering in a hot and humid climate
# description: |
#   In a cooled building in a humid summer vapor drives inward. Vinyl is a class I layer that a vapor schedule
#   seldom lists, and interiors are picked by someone else; after two summers there is pink and black mold behind
#   it. With a tight sheet outside the wall can dry to neither side. It does not apply in cold or dry climates,
#   nor to vinyl on partitions, whose rows have no sheet of an outside wall.
# custom:
#   id: vapor-vinyl-humid
#   topic: vapor
#   severity: warning
#   reason: Outdoor moisture reaches the cool back of the vinyl in summer, condenses there and feeds mold.
#   remedy: Use paint or a vapor-open covering on outside walls.
#   source: IRC R702.7 bars class I inside in zones 1 to 3; common practice of hotels
#   basis: source-read
#   example: "vinyl wall covering on outside walls in Charleston"
package vapor.vinyl_humid

import data.lib.facts
import data.lib.fault as told
import data.lib.finding
import data.lib.inside
import data.lib.section
import data.lib.vaporclass
import data.lib.winter

findings contains finding.at(line, ["material", vinyl.cell], message) if {
	winter.is_humid
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not line.id in section.judged_lines
	vinyl := [one | some one in inside.barriers(line); one.vinyl][0]
	message := _message(vinyl.text, _tail(line))
}

findings contains finding.at_with(told.outer_line(fault), told.cells(fault), message, extra) if {
	winter.is_humid
	some fault in section.judged
	fault.kind == "pair"
	inner := told.inner(fault)
	inside.is_vinyl(inner.family, inner.text)
	message := _message(inner.text, sprintf(", and %s outside is vapor-tight too", [told.outer(fault).text]))
	extra := {"related": told.related(fault)}
}

# The list of wall types tells the vinyl on a row of its own, and the sheet outside lets vapor in.
findings contains finding.at(facts.lines_by_id[layer.line], ["material", layer.at.cell], message) if {
	winter.is_humid
	some one in section.walls
	not one.id in {judged.id | some judged in section.judged}
	some i, layer in one.layers
	inside.is_vinyl(layer.family, layer.text)
	layer.vapor in data.vapor.classes.tight
	_is_of_outside_wall(one, i)
	not _is_told_by_row(facts.lines_by_id[layer.line])
	message := _message(layer.text, "")
}

_is_told_by_row(line) if {
	line.role in data.performance.sheets.vapor_roles
	some one in inside.barriers(line)
	one.vinyl
}

# Insulation and a sheet lie outside of it; a partition has wool alone.
_is_of_outside_wall(one, i) if {
	outer := [layer | some j, layer in one.layers; j > i]
	some wool in outer
	wool.insulates
	some sheet in outer
	sheet.class in data.vapor.barriers.sheet_classes
	not sheet.family in data.vapor.barriers.not_families
}

_message(vinyl, tail) := sprintf(
	"%s on an outside wall catches outdoor moisture in this hot, humid climate%s",
	[vinyl, tail],
)

_tail(line) := sprintf(", and %s outside is vapor-tight too", [item.text]) if {
	item := facts.main_items(line)[0]
	vaporclass.is_tight(item)
} else := ""
