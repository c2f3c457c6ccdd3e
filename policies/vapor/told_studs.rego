# METADATA
# title: Vapor-tight sheet outside of studs that hold all the insulation
# description: |
#   The row says that there is no insulation outside, that the studs are filled, and that its sheet is vapor-tight. The
#   sheet is then on the cold side of all the insulation, and by the second winter the board behind it is wet. An error
#   where the winter is cold and the sheet is class I, else a question. It does not apply where the row says nothing of
#   the insulation outside, as most do not, nor to mild winters.
# custom:
#   id: vapor-cold-side-studs
#   topic: vapor
#   severity: error
#   reason: Room moisture reaches the sheet where it is below the dew point, and condenses on it all winter.
#   remedy: Use a vapor-open sheet there, or put enough insulation outside of the sheet.
#   source: dew point at the sheet by ISO 13788; IRC R702.7 on insulation outside of a tight layer
#   basis: source-read
#   example: "0.05 perm sheet; remark: no exterior insulation here, batts only"
package vapor.told_studs

import data.lib.facts
import data.lib.finding
import data.lib.inside
import data.lib.limits
import data.lib.section
import data.lib.vaporclass
import data.lib.winter

findings contains finding.at_with(line, ["material", "tag", slot], message, extra) if {
	winter.celsius <= data.vapor.climate.cool_c
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not line.id in section.judged_lines
	not inside.barrier(line)
	sheet := facts.main_items(line)[0]
	vaporclass.is_tight(sheet)
	_is_filled(line)
	slot := _bare_outside(line)[0]
	message := sprintf("%s lies outside of all the insulation, which is in the studs; with %s room moisture %s", [
		sheet.text,
		sprintf("%s in the three coldest months", [winter.written(winter.celsius)]),
		"condenses on it",
	])
	extra := {"severity": _severity(sheet), "related": [finding.related_address(limit.at, limit.text) |
		some limit in limits.limits_for("vapor_ng", line, sheet.keys, line.role)
		"studs_filled" in limit.when
	]}
}

_severity(sheet) := "error" if {
	winter.celsius <= data.vapor.climate.cold_c
	vaporclass.of(sheet) == "I"
} else := "warning"

_is_filled(line) if facts.said(line, "studs_filled")

_is_filled(line) if {
	not facts.said(line, "studs_empty")
	some item in line.items
	facts.is_there(item)
	item.family in data.vapor.barriers.cavity_families
}

# _bare_outside lists the slots that say that no insulation lies outside.
_bare_outside(line) := [slot |
	some slot in data.vapor.order.slots
	regex.match(data.vapor.order.none_outside, lower(object.get(line.texts, slot, "")))
]
