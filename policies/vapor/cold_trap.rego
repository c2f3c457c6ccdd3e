# METADATA
# title: Two vapor barriers around insulation in a cold climate
# description: |
#   Each of the two is right somewhere, and together around insulation they are the worst of both. In a cold
#   climate the outer sheet lies below the dew point of the room all winter; what leaks past the film freezes
#   there and cannot leave in spring, and after two years the sheathing is soft. It does not apply to a vapor-open
#   sheet outside of the film, nor to a tight sheet with all insulation, or enough of it, outside.
# custom:
#   id: vapor-cold-trap
#   topic: vapor
#   severity: error
#   reason: Moisture from leaks of air and rain collects at the cold sheet and dries to neither side.
#   remedy: Take out the inner film, or put a vapor-open sheet outside, or move enough insulation outside of the sheet.
#   source: IRC R702.7 on class I on both sides; dew point at the sheet by ISO 13788
#   basis: source-read
#   example: "0.05 perm sheet outside full batts, polyethylene inside, in Milwaukee"
package vapor.cold_trap

import data.lib.fault as told
import data.lib.finding
import data.lib.section

findings contains finding.at_with(told.outer_line(fault), told.cells(fault), message, extra) if {
	some fault in section.judged
	fault.kind == "trap"
	message := sprintf("%s lies outside the insulation and %s inside it: with %s the wall can dry to neither side", [
		told.outer_text(fault),
		told.inner(fault).text,
		told.cold(fault),
	])
	extra := {"related": told.related(fault)}
}
