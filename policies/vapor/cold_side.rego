# METADATA
# title: Vapor-tight sheet on the cold side of the insulation
# description: |
#   A vapor-tight sheet belongs on the warm side of all or most of the insulation. On the cold side it is below the
#   dew point of the room in the cold months, and by the second winter the sheathing behind it is black. How much
#   insulation must lie outside depends on the winter and on the humidity of the room. An error where the winter is
#   cold and the sheet is class I, else a question. A film that the row's own words put outside of filled studs is
#   one, whatever the row is about, and so is the sheet of a row that goes on the insulation's cold side. It does
#   not apply to roofs, to walls in the ground, nor to mild winters, nor to such a film where a board of insulation
#   lies outboard.
# custom:
#   id: vapor-cold-side
#   topic: vapor
#   severity: error
#   reason: Room moisture reaches the sheet where it is below the dew point, and condenses on it all winter.
#   remedy: Put the sheet on the warm side, or enough insulation outside of it, or use a vapor-open sheet there.
#   source: dew point at the sheet by ISO 13788; IRC R702.7 on insulation outside of a tight layer
#   basis: source-read
#   example: "0.03 perm sheet between 150 mm wool and the street in Calgary"
package vapor.cold_side

import data.lib.facts
import data.lib.fault as told
import data.lib.finding
import data.lib.section
import data.lib.vaporclass
import data.lib.winter
import data.lib.words

findings contains finding.at_with(told.outer_line(fault), told.cells(fault), message, extra) if {
	some fault in section.judged
	fault.kind == "cold"
	message := sprintf("%s lies on the cold side of the insulation; with %s room moisture condenses on it%s", [
		told.outer_text(fault),
		told.cold(fault),
		told.share(fault),
	])
	extra := {"severity": _severity(fault), "related": told.related(fault)}
}

_severity(fault) := "error" if {
	fault.state == "cold"
	told.outer(fault).vapor == "I"
} else := "warning"

findings contains finding.at_with(line, [film.slot], message, {"severity": severity, "facts": [film.id]}) if {
	winter.celsius <= data.vapor.climate.cool_c
	some line in facts.live_lines
	not line.id in section.judged_lines
	not line.id in section.told_lines
	film := _film_outside(line)[0]
	_is_filled(line)
	not _has_board(line)
	severity := _film_severity
	message := sprintf("%s is put outside of the filled studs (%s); with %s in the three coldest months %s", [
		film.text,
		words.quoted(film.clause),
		winter.written(winter.celsius),
		"room moisture condenses on it",
	])
}

# The row's own sheet is tight, goes on the insulation, and is said to be on the cold side of it.
findings contains finding.at_with(line, ["material", "tag", "substrate", slot], message, {"severity": severity}) if {
	winter.celsius <= data.vapor.climate.cool_c
	some line in facts.live_lines
	not line.id in section.judged_lines
	not line.id in section.told_lines
	sheet := facts.main_items(line)[0]
	sheet.class in data.vapor.barriers.sheet_classes
	vaporclass.of(sheet) == "I"
	regex.match(data.vapor.barriers.cold_face.bed, lower(object.get(line.texts, "substrate", "")))
	slot := _cold_slots(line)[0]
	severity := _film_severity
	message := sprintf("%s goes on the cold side of the insulation (%s); with %s in the three coldest months %s", [
		sheet.text,
		words.quoted(line.texts[slot]),
		winter.written(winter.celsius),
		"room moisture condenses on it",
	])
}

# The row of open insulation tells of a tight sheet over its outer face.
findings contains finding.at_with(line, [sheet.at.cell], message, {"severity": severity, "facts": [sheet.id]}) if {
	winter.celsius <= data.vapor.climate.cool_c
	some line in facts.live_lines
	not line.id in section.judged_lines
	not line.id in section.told_lines
	sheet := _sheet_over(line)[0]
	severity := _film_severity
	message := sprintf("%s goes over the cold side of the insulation (%s); with %s in the three coldest months %s", [
		sheet.text,
		words.quoted(sheet.clause),
		winter.written(winter.celsius),
		"room moisture condenses on it",
	])
}

# No other insulation is told that could lie outside of the sheet, and the row is of a wall above ground.
_sheet_over(line) := [sheet |
	wool := facts.main_items(line)[0]
	wool.family in data.vapor.barriers.cavity_families
	{item.family | some item in line.items; item.class == "insulation"} - _cavity_families == set()
	not _is_excused(line)
	some sheet in line.items
	facts.is_there(sheet)
	sheet.class in data.vapor.barriers.sheet_classes
	vaporclass.of(sheet) == "I"
	text := lower(sheet.clause)
	regex.match(data.vapor.barriers.cold_face.over, text)
	not regex.match(data.vapor.barriers.cold_face.over_unless, text)
]

_cavity_families := {family | some family in data.vapor.barriers.cavity_families}

_is_excused(line) if {
	some text in array.concat([line.group, line.place], [text | some text in line.texts])
	some pattern in data.vapor.barriers.excused_words
	regex.match(pattern, lower(text))
}

_cold_slots(line) := [slot |
	some slot in data.vapor.barriers.cold_face.slots
	text := lower(object.get(line.texts, slot, ""))
	regex.match(data.vapor.barriers.cold_face.said, text)
	not regex.match(data.vapor.barriers.cold_face.unless, text)
]

_film_severity := "error" if {
	winter.celsius <= data.vapor.climate.cold_c
} else := "warning"

_film_outside(line) := array.concat(_named_film_outside(line), _own_film_outside(line))

_named_film_outside(line) := [item |
	some item in line.items
	facts.is_there(item)
	item.family in data.vapor.barriers.film_families
	regex.match(data.vapor.barriers.outside_of_studs, lower(item.clause))
]

# The row of the film itself says what it goes on.
_own_film_outside(line) := [object.union(item, {"clause": bed}) |
	item := facts.main_items(line)[0]
	item.family in data.vapor.barriers.film_families
	bed := object.get(line.texts, "substrate", "")
	regex.match(data.vapor.barriers.outside_of_studs, lower(bed))
]

_is_filled(line) if facts.said(line, "studs_filled")

_is_filled(line) if {
	not facts.said(line, "studs_empty")
	some item in line.items
	facts.is_there(item)
	item.family in data.vapor.barriers.cavity_families
}

_has_board(line) if {
	some item in line.items
	facts.is_there(item)
	item.class == "insulation"
	not item.family in data.vapor.barriers.cavity_families
}
