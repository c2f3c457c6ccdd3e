# METADATA
# title: Vapor-tight sheet on the cold side of the insulation
# description: |
#   A vapor-tight sheet belongs on the warm side of all or most of the insulation. On the cold side it is below
#   the dew point of the room in the cold months, and by the second winter the sheathing behind it is black. How
#   much insulation must lie outside depends on the winter and on the humidity of the room. An error where the
#   winter is cold and the sheet is class I, else a question. It does not apply to roofs, to walls in the ground,
#   nor to mild winters.
# custom:
#   id: vapor-cold-side
#   topic: vapor
#   severity: error
#   reason: Room moisture reaches the sheet where it is below the dew point, and condenses on it all winter.
#   remedy: Put the sheet on the warm side, or enough insulation outside of it, or use a vapor-open sheet there.
#   source: dew point at the sheet by ISO 13788; IRC R702.7 on insulation outside of a tight layer
#   basis: source-read
#   example: "0.03 perm sheet between 150 mm wool and the street in Calgary"
package vapor.cold_side

import data.lib.fault as told
import data.lib.finding
import data.lib.section

findings contains finding.at_with(told.outer_line(fault), told.cells(fault), message, extra) if {
	some fault in section.judged
	fault.kind == "cold"
	message := sprintf("%s lies on the cold side of the insulation; with %s room moisture condenses on it%s", [
		told.outer(fault).text,
		told.cold(fault),
		told.share(fault),
	])
	extra := {"severity": _severity(fault), "related": told.related(fault)}
}

_severity(fault) := "error" if {
	fault.state == "cold"
	told.outer(fault).vapor == "I"
} else := "warning"
