# METADATA
# title: Less insulation outside than the code's table has
# description: |
#   A stud wall with paint or kraft inside keeps dry in a cold climate only if the sheathing stays warm: the code's
#   tables name the least continuous insulation for each zone, more for thick stud walls, since what is between the
#   studs keeps the heat from the sheathing. With too little outside, the back of the sheathing is wet each winter
#   and dark with mold by the second. The figures are second-hand, so the row is said to differ, not to fail; the
#   adopted book decides. It does not apply to mass walls, roofs, walls with polyethylene inside, vented cladding up
#   to zone 6, sections with an unknown layer inside, nor to walls that the other vapor rules tell of.
# custom:
#   id: vapor-insulation-ratio
#   topic: vapor
#   severity: note
#   reason: The less of the insulation lies outside, the colder the sheathing that room moisture meets.
#   remedy: Put more insulation outside, or a class I or II retarder inside; check the table of the adopted code.
#   source: 2021 IRC table R702.7(3) and IBC 1404.3, second-hand; class II by R702.7(4), from memory
#   basis: source-read
#   example: "Climate zone 6: painted gypsum, 140 mm wool in studs, 25 mm XPS outside: R-5 against R-11.25"
package vapor.insulation_ratio

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.ratio
import data.lib.section
import data.lib.words
import data.lib.zone

findings contains finding.at_with(facts.lines_by_id[layer.line], slots, _message(wall, short), extra) if {
	zone.is_of_code
	some one in section.walls
	not one.lines[0] in section.judged_lines
	wall := _framed(one)
	short := _short(wall)
	layer := one.layers[wall.filled]
	slots := ["material", "tag", "layers", layer.at.cell]
	extra := {"severity": short.severity, "source": short.table.source, "related": _related(one, wall, layer)}
}

# _framed is a wall with insulation between studs and nothing of mass inside of it: {"filled": its number, "cavity":
# its layer, "inside", "out_si", "out"}.
_framed(one) := {"filled": filled, "cavity": one.layers[filled], "inside": inside, "out_si": out, "out": outer} if {
	filled := _filled(one)
	_is_between_studs(one, filled)
	inside := _inside(one, filled)
	outer := [i | some i, layer in one.layers; i > filled; layer.insulates]
	out := ratio.outside(one.layers, filled)
	not _is_vented(one, filled)
}

# _filled is the outermost insulation of the kinds that fill studs, but none that lies outside of the wall's sheet.
_filled(one) := max(inner) if {
	inner := [i | some i in _fills(one); _has_sheet(one, i + 1)]
	count(inner) > 0
} else := max(_fills(one))

_fills(one) := [i | some i, layer in one.layers; layer.family in data.vapor.barriers.cavity_families]

_has_sheet(one, from) if {
	some layer in array.slice(one.layers, from, count(one.layers))
	layer.class == "membrane"
}

_is_between_studs(one, filled) if {
	some layer in one.layers
	regex.match(data.vapor.barriers.cavity_words, lower(layer.text))
	count([m | some i, m in one.layers; _is_mass(one, i, m)]) == 0
	filled < count(one.layers) - 1
}

# A veneer or stucco as the outermost layer is a cladding of the stud wall.
_is_mass(one, i, layer) if {
	layer.class in data.vapor.ratio.mass_classes
	i < count(one.layers) - 1
}

_is_mass(_, _, layer) if layer.family in data.vapor.ratio.mass_families

# _inside is the tightest class of the room side; undefined where a layer is not known. Board alone will be painted.
_inside(one, filled) := tightest if {
	classes := [layer.vapor | some i, layer in one.layers; i <= filled]
	every class in classes { class in {"I", "II", "III", "none"} }
	tightest := [class | some class in ["I", "II", "III", "none"]; class in classes][0]
}

_is_vented(one, filled) if {
	zone.here.zone <= data.vapor.ratio.vented_zone
	some i, layer in one.layers
	i > filled
	_is_cladding(layer)
}

_is_cladding(layer) if {
	layer.class in data.vapor.ratio.vented_classes
	not layer.family in data.vapor.ratio.unvented_families
}

_is_cladding(layer) if regex.match(data.vapor.ratio.vented_words, lower(layer.text))

_short(wall) := {"need": need, "table": table, "severity": _severity(wall)} if {
	class := _row(wall)
	table := data.vapor.ratio[class]
	need := ratio.needed(class, wall.cavity)
	ratio.is_short(wall.out_si, class, wall.cavity)
}

# Without a retarder named and without insulation outside, too little is told to ask.
_row(wall) := "III" if wall.inside == "III"

_row(wall) := "III" if {
	wall.inside == "none"
	wall.out_si > 0
}

_row(wall) := "II" if {
	wall.inside == "II"
	wall.out_si > 0
}

_severity(wall) := "warning" if {
	zone.here.stated
	wall.inside == "III"
} else := "note"

_message(wall, short) := naming.say("%s with %s differs from the code's table: R-%s lies outside, the table has R-%v", [
	zone.here.says,
	_retarder(wall, short),
	words.number(wall.out_si * data.vapor.ratio.r_si),
	short.need,
])

_retarder(wall, short) := short.table.says if wall.inside != "none"

_retarder(wall, _) := "paint alone inside" if wall.inside == "none"

_related(one, wall, own) := array.concat(
	[finding.related(line, ["material", "tag"], "the insulation outside") |
		some i in wall.out
		one.layers[i].line != own.line
		line := facts.lines_by_id[one.layers[i].line]
	],
	[finding.related_address(zone.here.at, zone.here.text) | zone.here.stated],
)
