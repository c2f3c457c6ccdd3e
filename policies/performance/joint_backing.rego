# METADATA
# title: Joint sealed without backing
# description: |
#   The row says that the joint was filled solid, or that there is no rod or tape behind the bead. A bead that holds on
#   three sides cannot stretch: it tears along one face at the first winter, and a deep bead pulls harder still. It does
#   not apply where a bond breaker tape is named, to fillets and joints that are said not to move, nor to rows that say
#   nothing of the backing, as most do not.
# custom:
#   id: performance-joint-backing
#   topic: performance
#   severity: warning
#   reason: Held on three sides, the bead cannot stretch and tears off one face.
#   remedy: Rake it out, set a rod or a bond breaker tape, and seal half as deep as wide.
#   source: ASTM C1193 on joint backing and the depth of beads (from memory); common practice
#   basis: common-practice
#   example: "13 mm joint, backer left out, filled full depth"
package performance.joint_backing

import data.lib.facts
import data.lib.finding
import data.lib.joint
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", told.slot], message) if {
	some line in facts.live_lines
	line.role == "sealant"
	told := [s | some s in line.signals; s.id == "joint_unbacked"; not s.no][0]
	not _is_taped(line)
	not joint.is_still(line)
	item := facts.main_items(line)[0]
	message := naming.say("%s has no backing in its joint (%s)", [naming.plain(item), words.quoted(told.text)])
}

_is_taped(line) if {
	some item in line.items
	facts.is_there(item)
	item.family == "bond-breaker-tape"
}
