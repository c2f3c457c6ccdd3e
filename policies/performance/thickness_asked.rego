# METADATA
# title: Sheet thinner than its row asks
# description: |
#   The row has a column for the thickness that is specified, and the sheet in the same row is thinner. A thin
#   sheet bridges less, seals less around screws and is torn at corners, which shows as leaks at fasteners by the
#   second year. It does not apply to figures within the rounding of the other unit (40 mil is 1.016 mm and is
#   printed as 1.0 mm).
# custom:
#   id: performance-thickness-asked
#   topic: performance
#   severity: error
#   reason: The sheet is thinner than the same row asks.
#   remedy: Use a sheet of the thickness asked for, or correct the row.
#   source: the row itself
#   basis: source-read
#   example: "specified 1.0 mm, thickness 0.8 mm"
package performance.thickness_asked

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.thick

findings contains finding.at(line, ["material", "thickness", "min_thickness"], message) if {
	some line in facts.live_lines
	asked := line.figures.min_thickness_mm
	measure.is_sound(asked)
	thickness := thick.of(line)
	thick.under(thickness.mm, measure.low(asked))
	message := sprintf("%s is %s thick, but the row asks for %s", [
		thickness.item.text,
		measure.as_said("length", thickness.figure),
		measure.as_said("length", asked),
	])
}
