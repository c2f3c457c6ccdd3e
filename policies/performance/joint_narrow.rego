# METADATA
# title: Joint too narrow for a bead
# description: |
#   A bead needs a width to stretch over and a gap that a nozzle reaches into. The joint of the row is narrower than
#   the notes state, or than the 1/4 in (6 mm) that is usual for a joint that moves: the bead is a skin that holds on
#   nothing and splits with the first movement. It does not apply to beads between laps of metal, to fillets, to joints
#   that are told not to move, nor to rows that tell no width.
# custom:
#   id: performance-joint-narrow
#   topic: performance
#   severity: warning
#   reason: In a narrow joint the same movement is a large share of the width, and no backing goes in.
#   remedy: Open the joint to the width asked for, or cover it with a strip that bridges it.
#   source: the project's notes; else common practice for moving joints, 1/4 in (6 mm) at least
#   basis: common-practice
#   example: "joint 3 x 3 mm; the notes ask for 6 mm at least"
package performance.joint_narrow

import data.lib.facts
import data.lib.finding
import data.lib.joint
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	line.role == "sealant"
	width := line.figures.joint_mm
	measure.is_sound(width)
	item := facts.main_items(line)[0]
	need := _need(line, item)
	measure.high(width) < need.mm * (1 - data.performance.joints.narrow.share)
	not _is_other(line)
	message := naming.say("%s goes into a joint %s wide; %s %s", [
		naming.plain(item),
		measure.written(measure.high(width), "length", width),
		need.says,
		measure.written(need.mm, "length", width),
	])
	found := finding.at_with(line, ["material", "tag", width.at.cell], message, {
		"severity": need.severity,
		"related": need.related,
	})
}

_need(line, item) := {
	"mm": limit.min,
	"says": "the notes ask for at least",
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := limits.highest_min(limits.limits_for("joint_width_mm", line, item.keys, line.role))
} else := {
	"mm": data.performance.joints.narrow.least_mm,
	"says": "in a joint that moves the least is usually",
	"severity": "warning",
	"related": [],
}

# A bedding bead, a fillet and a joint that does not move stretch over no width.
_is_other(line) if joint.is_still(line)

_is_other(line) if {
	some text in line.texts
	regex.match(data.performance.joints.narrow.other, lower(text))
}
