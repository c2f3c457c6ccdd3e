# METADATA
# title: End dam lower than asked
# description: |
#   The row gives the height of the end dam, and the notes ask for more. A flashing that is level holds water up to
#   its lowest end, and a heavy rain fills it. It does not apply on the limit itself, nor where the notes give no
#   height, and says nothing of how the ends are made.
# custom:
#   id: sequence-end-dam-low
#   topic: sequence
#   severity: error
#   reason: Water that stands on the flashing runs over the low end into the wall.
#   remedy: Turn the end up to the height that the notes ask for.
#   source: the project's own notes
#   basis: source-read
#   example: "sill pan, end dam 1/4 in.; notes: end dams 1 in. minimum"
package sequence.end_dam_low

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	dam := line.figures.end_dam_mm
	measure.is_sound(dam)
	item := facts.main_items(line)[0]
	limit := limits.highest_min(limits.limits_for("end_dam_mm", line, item.keys, line.role))
	measure.low(dam) < limit.min - data.sequence.lap.tolerance_mm
	message := naming.say("%s has end dams of %s; the notes ask for %s", [
		naming.plain(item),
		measure.as_said("length", dam),
		measure.written(limit.min, "length", dam),
	])
	found := finding.at_with(line, ["material", "tag", "end_dam"], message, {
		"related": [finding.related_address(limit.at, limit.text)],
	})
}
