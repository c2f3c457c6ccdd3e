# METADATA
# title: Joint moves more than its sealant bears
# description: |
#   A sealant bears a share of the joint's width each way (25 %, 35 %, 50 %). The row tells the width and the movement,
#   and the share is larger than the data of the sealant allows: it tears in the middle or off one face in the first
#   cold winter. It does not apply where the row does not say that the movement is each way, nor to rows without a
#   width. Of a width and a depth the larger one is taken for the width.
# custom:
#   id: performance-joint-movement
#   topic: performance
#   severity: error
#   reason: A bead that is strained beyond its movement capability tears or comes off one face.
#   remedy: Make the joint wider, or take a sealant of a higher movement class.
#   source: the product's data in this workbook; movement as a share of the width, as ASTM C920 has it
#   basis: from-memory
#   example: "JS-3 (±25 %), joint 12 mm wide, moves ±6 mm"
package performance.joint_movement

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	line.role == "sealant"
	moves := line.figures.movement_mm
	measure.is_sound(moves)
	width := line.figures.joint_mm
	measure.is_sound(width)
	some item in facts.main_items(line)
	product := facts.product_of(item)
	bears := product.figures.movement
	measure.is_sound(bears)
	bears.min >= data.performance.joints.least_share
	share := measure.high(moves) / measure.high(width)
	share > bears.min + data.performance.joints.rounding_share
	message := naming.say("%s bears %d %% of the width each way; this joint of %s moves %s each way, or %d %%", [
		naming.plain(item),
		round(bears.min * 100),
		measure.written(measure.high(width), "length", width),
		measure.written(measure.high(moves), "length", moves),
		round(share * 100),
	])
	found := finding.at_with(line, ["material", "tag", "joint", moves.at.cell], message, {
		"related": [finding.related_product(product, [bears.at.cell], "its data")],
	})
}

# The row may tell the movement as a share of the width: "joint works ±40 %".
findings contains found if {
	some line in facts.live_lines
	line.role == "sealant"
	moves := line.figures.movement
	measure.is_sound(moves)
	not line.figures.movement_mm
	some item in facts.main_items(line)
	product := facts.product_of(item)
	bears := product.figures.movement
	measure.is_sound(bears)
	bears.min >= data.performance.joints.least_share
	measure.high(moves) > bears.min + data.performance.joints.rounding_share
	message := naming.say("%s bears %d %% of the width each way; this joint moves %d %% each way", [
		naming.plain(item),
		round(bears.min * 100),
		round(measure.high(moves) * 100),
	])
	found := finding.at_with(line, ["material", "tag", moves.at.cell], message, {
		"related": [finding.related_product(product, [bears.at.cell], "its data")],
	})
}
