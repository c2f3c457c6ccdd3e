# METADATA
# title: Bead as deep as its joint is wide
# description: |
#   A bead stretches like a rubber band between two faces: half as deep as wide it thins in the middle, as deep as wide
#   it pulls at its edges instead. The row's depth is above the most that the notes state, or is at least the width in a
#   joint of more than 1/2 in (13 mm), or above half of it by more than rounding where the notes ask for half. It does
#   not apply to joints that do not move, nor to beads of the least depth, 1/4 in (6 mm), in narrow joints.
# custom:
#   id: performance-joint-shape
#   topic: performance
#   severity: warning
#   reason: A deep bead strains more at its edges for the same movement, tears there, and takes long to cure.
#   remedy: Set the rod or a bond breaker higher, for a bead half as deep as the joint is wide.
#   source: the project's notes; else common practice for sealant joints, half of the width and 1/2 in at most
#   basis: common-practice
#   example: "joint 1 in wide, bead 1 in deep"
package performance.joint_shape

import data.lib.facts
import data.lib.finding
import data.lib.joint
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	line.role == "sealant"
	not joint.is_still(line)
	item := facts.main_items(line)[0]
	depth := _depth(line)
	fault := _fault(line, item, depth)
	message := naming.say("%s is %s deep%s; %s", [
		naming.plain(item),
		measure.written(depth.mm, "length", depth.figure),
		_width(line),
		fault.says,
	])
	found := finding.at_with(line, ["material", "tag", object.get(depth.figure.at, "cell", "joint")], message, {
		"severity": fault.severity,
		"related": fault.related,
	})
}

# The depth that the row tells, else the smaller of two sizes of its joint ("20 x 20 mm").
_depth(line) := {"mm": measure.high(figure), "figure": figure} if {
	figure := line.figures.joint_depth_mm
	measure.is_sound(figure)
} else := {"mm": measure.low(figure), "figure": figure} if {
	figure := line.figures.joint_mm
	measure.is_sound(figure)
	regex.match(data.performance.joints.sizes, lower(figure.text))
}

_fault(line, item, depth) := {
	"says": sprintf("the notes ask for at most %s", [measure.written(limit.max, "length", depth.figure)]),
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := limits.lowest_max(limits.limits_for("joint_depth_mm", line, item.keys, line.role))
	depth.mm > limit.max * (1 + data.performance.joints.shape.share)
} else := {
	"says": "the notes ask for half of the width",
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := limits.limits_for("joint_half", line, item.keys, line.role)[0]
	depth.mm > data.performance.joints.shape.least_mm
	depth.mm > measure.high(line.figures.joint_mm) * data.performance.joints.shape.half
} else := {"says": "half of the width is usual", "severity": "warning", "related": []} if {
	width := measure.high(line.figures.joint_mm)
	width > data.performance.joints.shape.narrow_mm
	depth.mm >= width * (1 - data.performance.joints.shape.share)
}

_width(line) := sprintf(" in a joint %s wide", [measure.written(measure.high(width), "length", width)]) if {
	width := line.figures.joint_mm
	measure.is_sound(width)
} else := ""
