# METADATA
# title: Vapor permeance outside a stated limit
# description: |
#   The notes ask for a tighter or a more open sheet at some rooms or of some kind: 0.1 perm at most around a
#   pool, 10 perm at least outside of batts. The wrong side of that bound shows after two winters as wet sheathing
#   and mold. Rows of one product under one note are told once. It does not apply to rows in which the words of
#   the note's place do not stand, nor to a least figure for a film inside of the studs, nor to figures within
#   rounding of perm and ng.
# custom:
#   id: performance-vapor-limit
#   topic: performance
#   severity: error
#   reason: The sheet lets more, or less, vapor through than the project asks at that place.
#   remedy: Use the sheet that the other rows of that place have, or one whose figure keeps the limit.
#   source: the project's notes
#   basis: source-read
#   example: "FM-4 (16 perm) at the vivarium, where the notes ask for 0.1 perm or less"
#   looks: across rows
package performance.vapor_limit

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure

findings contains found if {
	some hits in _grouped
	hit := hits[0]
	others := [finding.related(h.line, ["material", "place"], "the same sheet") |
		some h in array.slice(hits, 1, count(hits))
	]
	found := finding.at_with(hit.line, ["material", "place"], _message(hit), {"related": array.concat(
		[finding.related_address(hit.limit.at, hit.limit.text)],
		others,
	)})
}

_grouped := {key: hits |
	some key in {one.key | some one in _hits}
	hits := [hit | some hit in _hits; hit.key == key]
}

_hits := [{"key": key, "line": line, "item": item, "figure": figure, "limit": broken.limit, "says": broken.says} |
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	item := facts.main_items(line)[0]
	figure := facts.figure_of(line, "vapor_ng")
	measure.is_sound(figure)
	_breaks_some(figure)
	asked := [limit | some limit in limits.limits_for("vapor_ng", line, item.keys, line.role); _is_for_side(limit, line)]
	broken := _broken(asked, figure)
	not line.id in _cold_lines
	key := concat("|", [_name(line, item), broken.limit.at.sheet, broken.limit.text])
]

# A tight sheet outside of filled studs is told by its own rule.
_cold_lines := {found.line | some found in data.vapor.told_studs.findings}

# A limit for what lies on the room side is not one for the sheet outside.
_is_for_side(limit, line) if {
	not _is_of_room_side(limit)
	not _lies_inside(limit, line)
	not _is_beside_the_field(limit, line)
}

# What must be open is what lies outside; the retarder of the room side is none of it.
_lies_inside(limit, line) if {
	is_number(limit.min)
	some slot in ["place", "type", "material"]
	regex.match(data.vapor.barriers.inside_types, lower(object.get(line.texts, slot, "")))
}

# A smart retarder is made for the room side, and no limit that does not name it is for it.
_lies_inside(limit, line) if {
	is_number(limit.min)
	count(limit.keys) == 0
	facts.main_items(line)[0].family in data.vapor.barriers.smart_families
}

_is_for_side(limit, line) if {
	_is_of_room_side(limit)
	some item in facts.items_in(line, ["material", "tag"])
	item.family in data.vapor.barriers.inside_families
}

# How open a sheet must be is asked of the field of the wall, and not of its strips or of the film inside.
_is_beside_the_field(limit, line) if {
	limit.max == null
	texts := [object.get(line.texts, slot, "") | some slot in ["material", "detail"]]
	where := lower(concat(" ", array.concat([line.place, line.mark], texts)))
	regex.match(data.performance.vapor.strip, where)
	not regex.match(data.performance.vapor.field, where)
}

_is_beside_the_field(limit, line) if {
	limit.max == null
	some item in facts.main_items(line)
	item.family in data.vapor.barriers.inside_families
}

# Flashings are tight by their nature.
_is_beside_the_field(limit, line) if {
	limit.max == null
	line.role == "flashing"
}

# Nor of what lies inside of the studs, unless the note speaks of that.
_is_beside_the_field(limit, line) if {
	limit.max == null
	regex.match(data.vapor.barriers.inside_words, lower(line.place))
	not regex.match(data.vapor.barriers.inside_words, lower(limit.text))
}

# A strip that ties in to a tight sheet in place is an edge of that.
_is_beside_the_field(_, line) if {
	item := facts.main_items(line)[0]
	some under in facts.items_in(line, ["substrate", "under"])
	under.class == "membrane"
	under.product != ""
	under.product != item.product
}

_is_of_room_side(limit) if {
	text := lower(limit.text)
	regex.match(data.vapor.barriers.room_side_words, text)
	not _is_of_outer(regex.replace(text, `\([^)]*\)`, " "))
}

# A note on the outer sheet may tell in brackets where the retarder lies.
_is_of_outer(text) if {
	regex.match(data.performance.vapor.outer, text)
	not regex.match(data.vapor.barriers.room_side_words, text)
}

_name(_, item) := item.product if item.product != ""

_name(line, item) := line.id if item.product == ""

# Most sheets keep every limit of the project, wherever it holds: that is asked before the place is looked at.
_breaks_some(figure) if {
	some limit in limits.by_kind.vapor_ng
	_broken([limit], figure)
}

_broken(asked, figure) := {"limit": limit, "says": "at most"} if {
	limit := limits.lowest_max(asked)
	measure.high(figure) > limit.max * (1 + data.performance.vapor.share)
} else := {"limit": limit, "says": "at least"} if {
	limit := limits.highest_min(asked)
	measure.low(figure) < limit.min * (1 - data.performance.vapor.share)
}

_message(hit) := sprintf("%s%s has a vapor permeance of %s; the notes ask for %s %s there", [
	hit.item.text,
	_where(hit.line),
	measure.as_said("vapor", hit.figure),
	hit.says,
	measure.written(_bound(hit), "vapor", hit.figure),
])

_where(line) := sprintf(" at %s", [line.place]) if {
	object.get(line, "place", "") != ""
} else := ""

_bound(hit) := hit.limit.max if hit.says == "at most"

_bound(hit) := hit.limit.min if hit.says == "at least"
