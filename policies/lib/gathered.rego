# METADATA
# title: Water gathered in sections
# description: |
#   The computed sections in which water gathers, with the place of most of it. Sections with a faulty order of
#   barriers are left out: that is the same mistake. So are those without insulation, such as a canopy, a parapet's
#   cap or a wall below grade: no room is kept warm by them, or nothing in them gets colder than the room bears.
package lib.gathered

import data.lib.facts
import data.lib.section

# all lists {"name", "line", "where", "peak", "left", "dries", "estimated"}.
all := [object.union(found, {"line": _line(profile, plane), "where": plane.text, "name": section.called(profile)}) |
	some profile in input.profiles
	profile.result.known
	section.is_insulated(profile)
	plane := _worst(profile)
	not _is_judged(profile)
	found := {
		"peak": profile.result.peak_g_m2,
		"left": profile.result.left_g_m2,
		"dries": profile.result.dries_out,
		"estimated": profile.result.conditions.estimated,
	}
]

_worst(profile) := [plane | some plane in profile.result.planes; plane.peak_g_m2 == top][0] if {
	top := max([plane.peak_g_m2 | some plane in profile.result.planes])
}

_line(profile, plane) := line if {
	line := facts.lines_by_id[profile.layers[plane.outer].line]
	not line.struck
} else := [line | some line in facts.live_lines; line.id in profile.lines][0]

_is_judged(profile) if {
	some one in section.judged
	one.id == profile.id
}
