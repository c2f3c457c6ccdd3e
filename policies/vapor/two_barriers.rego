# METADATA
# title: Two vapor barriers around insulation
# description: |
#   A tight sheet or foam outside and a film, foil or vinyl inside close the cavity between them; what leaks in
#   stays, and is found as rot two or more years later. A question where the climate or the insulation outside
#   leaves it open whether the outer sheet gets cold, and where the list of wall types has the one and a row puts the
#   other there, or has a smart retarder where a row puts a film; a note where the section keeps it warm, no note of
#   the project bars a second one, and the code's table of the zone has such a layer inside. It does not apply to empty
#   studs where neither a note nor the wall type bars a second one, to a wall whose outside is all vapor-open, unless it
#   is to dry to the room through a smart retarder, nor to claddings and roofs.
# custom:
#   id: vapor-two-barriers
#   topic: vapor
#   severity: warning
#   reason: Water that gets between two barriers, from a leak or from damp materials, dries to neither side.
#   remedy: Leave one of the two out, or show by calculation that the cavity stays dry.
#   source: IRC R702.7 on class I on both sides; common practice
#   basis: source-read
#   example: "polyethylene on filled studs inside, 0.03 perm sheet on the sheathing"
package vapor.two_barriers

import data.lib.facts
import data.lib.fault as told
import data.lib.finding
import data.lib.inside
import data.lib.inside_section
import data.lib.inside_type
import data.lib.section
import data.lib.winter
import data.lib.words
import data.lib.zone

findings contains finding.at_with(told.outer_line(fault), told.cells(fault), message, extra) if {
	some fault in section.judged
	fault.kind == "pair"
	not _is_vinyl_case(told.inner(fault))
	not _is_barred_inside(fault)
	message := _message(told.outer_text(fault), told.inner(fault).text)
	extra := {"severity": _severity(fault), "related": told.related(fault)}
}

# Where the code's table has no such layer on the room side, that is the one to leave out.
findings contains finding.at_with(line, ["material", "tag", "layers", inner.at.cell], message, extra) if {
	some fault in section.judged
	fault.kind == "pair"
	inner := told.inner(fault)
	not _is_vinyl_case(inner)
	_is_barred_inside(fault)
	line := facts.lines_by_id[inner.line]
	message := sprintf("%s; the code's table has no class %s on the room side in %s", [
		_message(told.outer_text(fault), inner.text),
		inner.vapor,
		zone.here.says,
	])
	outer := finding.related(told.outer_line(fault), ["material", "tag", "layers"], "the outer barrier")
	others := [one | some one in told.related(fault); one.line != line.id]
	extra := {"severity": "warning", "related": array.concat([outer], others)}
}

_is_barred_inside(fault) if {
	inner := told.inner(fault)
	inner.line != told.outer(fault).line
	inner.family in data.vapor.barriers.inside_families
	zone.here.stated
	zone.here.zone in data.vapor.ratio.barred[inner.vapor]
}

findings contains finding.at(pair.line, ["material", pair.cell, pair.outer.at.cell], message) if {
	some pair in inside.pairs
	not _is_told(pair)
	message := _message(pair.outer.text, pair.inner)
}

findings contains finding.at_with(pair.line, ["material", "tag", pair.cell], message, {"related": related}) if {
	some pair in inside.across
	not _is_told(pair)
	not _is_told_at_sheet(pair)
	message := _across(pair)
	outer := finding.related(pair.outer_line, ["material", "tag"], "the outer barrier")
	walls := [finding.related(wall, ["remark", "layers"], "the wall type") | some wall in pair.barred]
	notes := [finding.related_address(limit.at, limit.text) | some limit in pair.noted]
	related := array.concat(array.concat([outer], walls), notes)
}

# The film and the filled studs stand in the wall type, and the row closes its outside.
findings contains finding.at_with(pair.line, cells, message, {"related": [related]}) if {
	some pair in inside_type.pairs
	not pair.line.id in _row_told
	cells := ["material", "tag", pair.outer.at.cell]
	message := sprintf("%s closes the outside of wall type %s, which has %s inside of filled studs and %s to dry by", [
		pair.outer.text,
		pair.wall.mark,
		pair.film.text,
		pair.open.text,
	])
	related := finding.related(pair.wall, ["layers"], "the wall type")
}

# The wall type has no film inside, and the row puts one there.
findings contains finding.at_with(bar.line, cells, message, {"related": [related]}) if {
	some bar in inside.barred
	not bar.line.id in _row_told
	cells := ["material", "tag", bar.film.at.cell]
	message := sprintf("%s lies inside of %s, but wall type %s says %s", [
		bar.film.text,
		bar.outer.text,
		bar.wall.mark,
		words.quoted(bar.text),
	])
	related := finding.related(bar.wall, ["layers"], "the wall type")
}

# The wall type has a smart retarder inside, by which it dries to the room, and the row puts a film there.
findings contains finding.at_with(one.line, ["material", "tag", one.film.at.cell], message, {"related": [related]}) if {
	some one in inside_type.added
	not one.line.id in _row_told
	message := sprintf("%s lies inside of wall type %s, whose %s is to let it dry to the room", [
		one.film.text,
		one.wall.mark,
		one.smart.text,
	])
	related := finding.related(one.wall, ["layers"], "the wall type")
}

# The wall type is told layer by layer and leaves the inside of its tight sheet open, and the row puts a film there.
findings contains finding.at_with(one.line, ["material", "tag", one.cell], message, {"related": [related]}) if {
	some one in inside_section.added
	not one.line.id in _row_told
	not _is_told(one)
	message := sprintf("%s lies inside of %s, and wall type %s has no barrier there", [
		one.inner,
		one.outer.text,
		one.wall.name,
	])
	outer := facts.lines_by_id[one.outer.line]
	related := finding.related(outer, ["material", "tag", "layers"], "the outer barrier")
}

# The film is that of the wall type, whose outside is open: then the row with the tight sheet is at fault, not this one.
_is_told_at_sheet(pair) if {
	some other in inside_type.pairs
	other.line.id == pair.outer_line.id
	other.film.text == pair.inner
	not other.line.id in _row_told
}

_row_told := _open_limit_lines | {pair.line.id | some pair in array.concat(inside.pairs, inside.across)}

# No insulation lies between the two, and the notes bar a second one all the same.
findings contains finding.at_with(line, ["material", "tag", inner.at.cell], message, {"related": related}) if {
	facts.project_said("one_tight_layer")
	some one in section.walls
	not one.id in _judged
	some i, inner in one.layers
	inner.barrier
	inner.family in data.vapor.barriers.inside_families
	outer := [layer | some j, layer in one.layers; j > i + 1; _is_outer_sheet(layer)][0]
	line := facts.lines_by_id[inner.line]
	message := _of_notes(inner.text, outer.text)
	related := [finding.related(facts.lines_by_id[outer.line], ["material", "tag"], "the outer barrier")]
}

_judged := {one.id | some one in section.judged}

_is_outer_sheet(layer) if {
	layer.barrier
	layer.class in data.vapor.barriers.sheet_classes
	not layer.family in data.vapor.barriers.inside_families
}

_across(pair) := sprintf("%s lies inside of %s, and wall type %s allows one vapor-tight layer (%s)", [
	pair.inner,
	pair.outer.text,
	pair.barred[0].mark,
	words.quoted([s.text | some s in pair.barred[0].signals; s.id == "one_tight_layer"][0]),
]) if {
	count(pair.barred) > 0
} else := sprintf("%s lies inside of %s, but wall type %s says %s", [
	pair.inner,
	pair.outer.text,
	pair.barred[0].mark,
	words.quoted([s.text | some s in pair.barred[0].signals; s.id == "vapor_open_inside"; not s.no][0]),
]) if {
	count(pair.barred) > 0
} else := message if {
	count(pair.noted) > 0
	message := sprintf("%s lies inside of %s, where the notes keep the inside open (%s)", [
		pair.inner,
		pair.outer.text,
		words.quoted(pair.noted[0].text),
	])
} else := _of_notes(pair.inner, pair.outer.text) if {
	not pair.filled
} else := _message(pair.outer.text, pair.inner)

_of_notes(inner, outer) := sprintf(
	"%s lies inside of %s, and the notes allow one vapor-tight layer a wall",
	[inner, outer],
)

_message(outer, inner) := sprintf(
	"%s and %s close in the insulation between them, which dries to neither side",
	[outer, inner],
)

# The notes may bar a second barrier wherever it lies.
_severity(fault) := "note" if {
	fault.state == "warm"
	not facts.project_said("one_tight_layer")
} else := "warning"

_is_vinyl_case(layer) if {
	inside.is_vinyl(layer.family, layer.text)
	winter.is_humid
}

_is_told(pair) if {
	pair.vinyl
	winter.is_humid
}

_is_told(pair) if pair.line.id in _open_limit_lines

# So does the wall that is drawn with an open sheet there.
_is_told(pair) if pair.line.id in {found.line | some found in data.vapor.open_drawn.findings}

_open_limit_lines := {found.line | some found in data.vapor.open_outside.findings}
