# METADATA
# title: Coal tar or creosote on site
# description: |
#   Coal tar and creosote carry compounds that irritate skin and lungs and are carcinogens. Grinding or torching
#   near them is the worst; leaving them alone and separated is often the safest. Two years on, what was left is
#   still there for the next trade, so mark it on the drawings. Told once, at the first row that meets it, and
#   also where it is to be removed. The local rule on hazardous material governs. It does not apply to asphalt
#   felt called tar paper.
# custom:
#   id: safety-coal-tar
#   topic: safety
#   severity: note
#   reason: Coal tar and creosote irritate skin and lungs and are carcinogens when cut, ground or heated.
#   remedy: Have a trained crew remove or cover it, and follow the local rule on dust, fumes and waste.
#   source: common practice; the local authority's rule governs
#   basis: common-practice
#   example: "old coal-tar dampproofing left on the wall"
#   looks: across rows
package safety.coal_tar

import data.lib.facts
import data.lib.finding
import data.lib.naming

findings contains finding.at(use.line, [use.item.at.cell], message) if {
	use := _uses[0]
	message := sprintf("%s: do not cut, grind or heat it without protection and a plan for dust and waste", [
		naming.closed(use.item.text),
	])
}

_uses := [{"line": line, "item": item} |
	some line in facts.live_lines
	some item in line.items
	some key in ["coal-tar", "creosote"]
	key in item.keys
	item.polarity in {"yes", "removed"}
]
