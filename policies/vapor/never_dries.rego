# METADATA
# title: Winter water that does not dry
# description: |
#   The monthly sum of vapor diffusion shows water that gathers in winter and is not gone by the next; each year
#   begins wetter, and two or more years on wood there begins to rot. The method knows no air leakage, rain or
#   storage, so the truth is rather worse. A question where the humidity outside was estimated. It does not apply
#   to sections whose order of barriers is wrong, which are told by that.
# custom:
#   id: vapor-never-dries
#   topic: vapor
#   severity: error
#   reason: Water gathers in the section each winter and more is left each year.
#   remedy: Put more insulation outside, a tighter layer inside or a more open one outside, and compute again.
#   source: ISO 13788 (monthly sum; no air leakage, rain or storage)
#   basis: source-read
#   example: "W4: water gathers at the sheathing, and 310 g/m² are left after a year"
package vapor.never_dries

import data.lib.finding
import data.lib.gathered

findings contains finding.at_with(one.line, ["material", "tag"], message, {"severity": _severity(one)}) if {
	some one in gathered.all
	one.dries == false
	one.left >= data.vapor.amounts.left_g_m2
	message := sprintf("%s: water gathers %s in winter, and %d g/m² are left after a year", [
		one.name,
		one.where,
		round(one.left),
	])
}

_severity(one) := "warning" if one.estimated

_severity(one) := "error" if not one.estimated
