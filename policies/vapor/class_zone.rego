# METADATA
# title: Vapor class inside that the zone or the notes do not have
# description: |
#   The code's table of retarders bars class I inside in zones 1 to 3 and class II in zones 1 and 2: there the vapor
#   comes from outside most of the year, and a kraft face or film on the room side is where it stops. After two
#   humid summers the back of the gypsum is spotted. The figures are second-hand, so the row is said to differ and
#   the adopted book decides. It does not apply to vinyl wall covering and to film that another rule tells of, to
#   class II in zone 3, to roofs, nor where neither notes nor station tell the zone. Where the notes of the project
#   bar the class on the room side, a film that its row puts there, and insulation whose face its row turns to the
#   room, is an error in any zone.
# custom:
#   id: vapor-class-zone
#   topic: vapor
#   severity: note
#   reason: In a warm zone vapor drives inward, and a tight layer on the room side keeps it in the wall.
#   remedy: Leave the retarder out or take unfaced insulation; check the table of the adopted code.
#   source: 2021 IRC table R702.7(2) and IBC 1404.3, second-hand
#   basis: source-read
#   example: "Climate zone 2A: kraft-faced batts behind the gypsum board"
package vapor.class_zone

import data.lib.facts
import data.lib.finding
import data.lib.inside
import data.lib.measure
import data.lib.naming
import data.lib.section
import data.lib.vaporclass
import data.lib.words
import data.lib.zone
import data.vapor.inside_warm

findings contains finding.at_with(facts.lines_by_id[layer.line], slots, message, extra) if {
	zone.is_of_code
	some one in section.walls
	some i, layer in one.layers
	layer.family in _kinds
	not layer.family in data.vapor.barriers.vinyl.families
	zone.here.zone in data.vapor.ratio.barred[layer.vapor]
	_has_insulation(one, i)
	not layer.line in section.judged_lines
	not layer.line in _told
	not layer.line in {one.line.id | some one in _noted}
	slots := ["material", "tag", layer.at.cell]
	message := naming.say("%s is class %s on the room side in %s, unlike the code's table, which has none there", [
		layer.text,
		layer.vapor,
		zone.here.says,
	])
	extra := {
		"severity": _severity,
		"related": [finding.related_address(zone.here.at, zone.here.text) | zone.here.stated],
	}
}

# The notes bar the class there.
findings contains finding.at_with(one.line, ["material", "tag", one.slot], message, extra) if {
	some one in _noted
	message := naming.say("%s is class %s and goes on the room side%s, where the notes allow none (%s)", [
		naming.plain(one.item),
		one.class,
		one.says,
		words.quoted(one.bar.text),
	])
	extra := {"severity": "error", "related": [finding.related_address(one.bar.at, one.bar.text)]}
}

_noted := [{"line": line, "item": item, "class": class, "slot": side.slot, "says": side.says, "bar": bar} |
	count(_bars) > 0
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	side := _room_side(line, item)
	class := _class(line, item)
	bar := [one | some one in _bars; class in one.classes; _is_of(one, line)][0]
]

# _bars are the sentences of notes that bar classes on the room side.
_bars := [{"text": sentence, "at": note.at, "classes": classes, "walls": walls} |
	some note in input.project.notes
	some sentence in regex.split(`[.;]\s`, note.text)
	said := lower(sentence)
	found := regex.find_all_string_submatch_n(data.vapor.told.classes, said, 1)[0]
	not regex.match(data.vapor.told.classes_unless, said)
	regex.match(data.vapor.told.sides.room, said)
	classes := {data.vapor.told.classes_of[found[i]] | some i in [1, 2]; found[i] != ""}
	walls := {wall | some wall in regex.find_n(data.vapor.told.classes_walls, said, -1)}
]

_is_of(bar, _) if count(bar.walls) == 0

_is_of(bar, line) if lower(line.group) in bar.walls

_room_side(line, item) := {"slot": "substrate", "says": ""} if {
	item.family in data.vapor.barriers.inside_families
	inside.tells_inside(line)
} else := {"slot": said.slot, "says": sprintf(" (%s)", [words.quoted(said.text)])} if {
	item.class == "insulation"
	facts.denied(line, "facer_outward")
	said := [s | some s in line.signals; s.id == "facer_outward"; s.no][0]
}

_class(line, item) := vaporclass.by_ng(measure.high(line.figures.vapor_ng)) if {
	measure.is_sound(line.figures.vapor_ng)
} else := vaporclass.of(item)

# Batts with a face of kraft or foil are retarder and insulation in one.
_kinds := {family | some family in array.concat(data.vapor.barriers.inside_families, data.vapor.ratio.faced_families)}

_has_insulation(one, i) if {
	some layer in array.slice(one.layers, i, count(one.layers))
	layer.insulates
}

_told := {found.line | some found in inside_warm.findings}

_severity := "warning" if zone.here.stated

_severity := "note" if not zone.here.stated
