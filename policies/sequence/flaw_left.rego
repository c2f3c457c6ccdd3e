# METADATA
# title: Flaw left in the sheet
# description: |
#   The row tells of a tear, a hole, a fishmouth, pinholes, a release film left on, a sheet put on the wrong way or one
#   that was pressed on by hand and never rolled, and not that it was mended. Each is a way in for water and air, and
#   the cover hides it. It does not apply where the same cell says that it was patched, cut, sealed or done again.
# custom:
#   id: sequence-flaw-left
#   topic: sequence
#   severity: warning
#   reason: A hole or an open lap lets water and air in, wherever the rest is tight.
#   remedy: Cut, patch and roll as the maker's repair detail shows, have it looked at, and write it in the row.
#   source: "common practice: damage and open laps are repaired before the sheet is covered"
#   basis: common-practice
#   example: "Remark: two tears at the jamb, not patched"
package sequence.flaw_left

import data.lib.facts
import data.lib.mended
import data.lib.thick

findings contains mended.told(line, "flaw_left", "%s has a flaw that the row does not say was mended (%s)") if {
	some line in facts.live_lines
}

# What sticks by pressure is rolled; what is poured or brushed on is not.
findings contains mended.told(line, "not_rolled", "%s is not rolled, as the row tells (%s)") if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	item.class in data.sequence.rolled.classes
	not thick.is_film(item)
}
