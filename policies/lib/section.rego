# METADATA
# title: Sections
# description: |
#   The layers of each assembly, room side first, with vapor class and insulation, and what is wrong with their order:
#   two barriers around insulation, or a barrier on its cold side. A section comes from a profile, or from the
#   build-up told in one cell of a row that is in no profile.
package lib.section

import data.lib.facts
import data.lib.ratio
import data.lib.vaporclass
import data.lib.winter

# all lists {"name", "layers", "lines", "needed", "winter", "usual_room"}; needed and winter are null where they are
# not known. usual_room: the air of the room is that of the usual class, not a stated one.
all := array.concat(
	[_of_profile(profile) | some profile in input.profiles; not _has_no_side(profile)],
	[_of_row(line) | some line in facts.live_lines; _tells_field(line); not line.id in told_lines],
)

# walls are the sections that are no roof and stand above the ground.
walls := [section | some section in all; not _is_excused(section)]

# judged lists the sections with a fault: the section with "kind" (trap, pair, cold), "inner", "outer" and "state".
judged := [object.union(section, fault) | some section in walls; fault := _fault(section)]

# judged_lines are the lines of judged sections.
judged_lines := {line | some section in judged; some line in section.lines}

# Where nothing tells which side is listed first, nothing is said of the order.
_has_no_side(profile) if profile.first == ""

# called is what a section goes by: its mark, else its type, else its place or row.
called(profile) := profile.mark if {
	profile.mark != ""
} else := name if {
	line := [line | some id in profile.lines; line := facts.lines_by_id[id]][0]
	name := [text |
		some text in [line.group, object.get(line.texts, "type", ""), object.get(line.texts, "place", "")]
		text != ""
	][0]
} else := "this section"

# is_insulated: one of its layers insulates.
is_insulated(profile) if _has_insulation(profile, 0, count(profile.layers))

# told_lines are those of profiles, whether their order is known or not.
told_lines := {line | some profile in input.profiles; some line in profile.lines}

_of_profile(profile) := {
	"id": profile.id,
	"name": profile.mark,
	"lines": profile.lines,
	"layers": [_layer(layer, _computed(profile, i)) | some i, layer in profile.layers; _is_field(profile, layer)],
	"needed": _needed(profile),
	"winter": _winter(profile),
	"usual_room": _room(profile) == data.vapor.ratio.room,
}

# A profile that could not be computed has no result and tells of no room.
_room(profile) := profile.result.conditions.class

default _room(_) := ""

_of_row(line) := {
	"id": line.id,
	"name": line.mark,
	"lines": [line.id],
	"layers": [_layer(object.union(item, {"line": line.id, "insulates": item.class == "insulation"}), {}) |
		some item in line.layers
		item.polarity in {"yes", ""}
	],
	"needed": null,
	"winter": _winter({}),
	"usual_room": false,
}

# The row tells an assembly across its columns, and its sheet is the field of it.
_tells_field(line) if {
	count(object.get(line, "layers", [])) > 1
	not line.role in data.vapor.barriers.not_roles
	not is_strip(line)
	not regex.match(data.vapor.barriers.local_words, lower(line.place))
}

_layer(layer, computed) := {
	"line": layer.line,
	"text": layer.text,
	"family": layer.family,
	"class": layer.class,
	"item": object.get(layer, "item", layer.text),
	"at": layer.at,
	"insulates": layer.insulates,
	"thickness_mm": object.get(layer, "thickness_mm", null),
	"r": object.get(computed, "r_m2kw", null),
	"share": object.get(computed, "outside_share", null),
	"vapor": vapor,
	"barrier": _is_barrier(layer, vapor),
} if {
	vapor := _vapor(layer, computed)
}

# A strip at an opening or edge is no layer of the wall; a build-up told in one cell has no strips.
_is_field(_, layer) if {
	facts.is_live(layer.line)
	line := facts.lines_by_id[layer.line]
	not line.role in data.vapor.barriers.not_roles
	not is_strip(line)
}

_is_field(profile, layer) if {
	facts.is_live(layer.line)
	count(profile.lines) == 1
}

# is_strip: the row tells a strip or a tape and not the field of the wall.
is_strip(line) if regex.match(data.vapor.barriers.strip_words, lower(object.get(line.texts, "material", "")))

is_strip(line) if facts.main_items(line)[0].class == "tape"

# is_local_detail: a column of details tells a jamb or an edge, and not "jamb, full bay".
is_local_detail(line) if {
	some ref in line.refs
	regex.match(data.vapor.barriers.local_words, lower(ref))
	not regex.match(data.vapor.barriers.whole_words, lower(ref))
}

_computed(profile, i) := profile.result.layers[i]

default _computed(_, _) := {}

_vapor(layer, computed) := vapor if {
	vapor := vaporclass.of(layer)
	vapor != ""
} else := object.get(computed, "vapor_class", "")

_needed(profile) := profile.result.share.needed_outside_share

default _needed(_) := null

_winter(profile) := winter.of(profile) if {
	winter.of(profile)
} else := winter.celsius

default _winter(_) := null

default _is_barrier(_, _) := false

_is_barrier(layer, vapor) if {
	vapor in data.vapor.classes.tight
	layer.class in data.vapor.barriers.classes
	not layer.family in data.vapor.barriers.not_families
}

_is_barrier(layer, vapor) if {
	vapor in data.vapor.barriers.foam_vapor
	layer.class in data.vapor.barriers.foam_classes
}

# Roofs and walls in the ground are built by other rules, and without heat inside no side is the warm one.
_is_excused(section) if {
	some id in section.lines
	line := facts.lines_by_id[id]
	some text in [section.name, line.group]
	some words in data.vapor.barriers.excused_words
	regex.match(words, lower(text))
}

# A list of walls may tell it among the layers: "CIP foundation; sheet; XPS; fill".
_is_excused(section) if {
	some id in section.lines
	some words in data.vapor.barriers.excused_layers
	regex.match(words, lower(object.get(facts.lines_by_id[id].texts, "layers", "")))
}

_is_excused(section) if {
	some id in section.lines
	some signal in data.vapor.barriers.below_signals
	facts.said(facts.lines_by_id[id], signal)
}

_fault(section) := {"kind": "trap", "inner": pair.inner, "outer": pair.outer, "state": "cold"} if {
	pair := _pairs(section)[0]
	_state(section, pair.outer) == "cold"
} else := {"kind": "pair", "inner": pair.inner, "outer": pair.outer, "state": _state(section, pair.outer)} if {
	pair := _pairs(section)[0]
} else := {"kind": "cold", "inner": null, "outer": outer, "state": _state(section, outer)} if {
	outer := _cold_sheets(section)[0]
}

_pairs(section) := [{"inner": i, "outer": j} |
	some i, a in section.layers
	a.barrier
	some j, b in section.layers
	j > i
	b.barrier
	_has_insulation(section, i + 1, j)
]

_cold_sheets(section) := [i |
	some i, layer in section.layers
	layer.barrier
	layer.class in data.vapor.barriers.sheet_classes
	_has_insulation(section, 0, i)
	_state(section, i) in {"cold", "cool"}
]

_has_insulation(section, from, to) if {
	some layer in array.slice(section.layers, from, to)
	layer.insulates
}

# _state is cold or cool where the barrier lies too far out for the winter, warm where it lies well, else unknown.
_state(section, i) := "unknown" if {
	section.winter == null
} else := "unknown" if {
	_may_be_warm(section, i)
} else := "warm" if {
	not _lies_cold(section, i)
} else := "cold" if {
	section.winter <= data.vapor.climate.cold_c
} else := "cool" if {
	section.winter <= data.vapor.climate.cool_c
} else := "mild"

_lies_cold(section, i) if {
	_is_computed(section, i)
	section.layers[i].share < section.needed
	not _meets_table(section, i)
}

_lies_cold(section, i) if {
	not _is_computed(section, i)
	not _has_insulation(section, i, count(section.layers))
}

# Of filled studs in rooms of usual humidity the code's table decides, which long practice has found to be enough.
_meets_table(section, i) if {
	section.usual_room
	filled := max([j | some j, layer in section.layers; j < i; layer.family in data.vapor.barriers.cavity_families])
	ratio.needed("III", section.layers[filled])
	not ratio.is_short(ratio.outside(section.layers, i), "III", section.layers[filled])
}

# Of a layer of which no word was read it is not known whether it insulates.
_may_be_warm(section, i) if {
	not _is_computed(section, i)
	some layer in array.slice(section.layers, i, count(section.layers))
	layer.class == ""
	layer.item == ""
}

_is_computed(section, i) if {
	is_number(section.needed)
	is_number(section.layers[i].share)
}
