# METADATA
# title: Facing of the insulation on the cold side
# description: |
#   The foil or kraft face of insulation is its vapor retarder and belongs on the warm side. Put to the glass or the
#   sheathing it is the first cold face that room moisture meets, and by the second winter water runs down behind it.
#   An error where the winter is cold or the notes say which way it faces, else a question. It does not apply where the
#   winter is mild or not known and neither the notes nor another cell of the row say which way it is to face.
# custom:
#   id: vapor-facer-cold-side
#   topic: vapor
#   severity: error
#   reason: Room moisture passes the open face and condenses on the tight one, which is at the cold.
#   remedy: Turn the facing to the room and tape it, or use unfaced insulation with a retarder on the room side.
#   source: IRC R702.7 (vapor retarder on the interior side in cold zones); common practice for spandrels
#   basis: source-read
#   example: "Kraft face put to the sheathing, Duluth"
package vapor.facer_cold

import data.lib.facts
import data.lib.finding
import data.lib.winter
import data.lib.words

findings contains finding.at_with(line, ["material", "tag", told.slot], message, extra) if {
	some line in facts.live_lines
	told := [s | some s in line.signals; s.id == "facer_outward"; not s.no][0]
	_insulates(line)
	severity := _severity(line, told)
	message := sprintf("the facing of the insulation is on its cold side (%s)", [words.quoted(told.text)])
	extra := {"severity": severity, "related": _notes}
}

_insulates(line) if line.role == "insulation"

_insulates(line) if {
	some item in line.items
	item.class == "insulation"
	facts.is_there(item)
}

# Undefined where neither the notes nor the winter say that the outside is the cold side.
_severity(_, _) := "error" if {
	count(_notes) > 0
} else := "error" if {
	winter.celsius <= data.vapor.climate.cold_c
} else := "warning" if {
	winter.celsius <= data.vapor.climate.cool_c
}

# The row itself asks for the same facing on the room side, in another cell.
_severity(line, told) := "warning" if {
	not winter.celsius <= data.vapor.climate.cool_c
	count(_notes) == 0
	some asked in line.signals
	asked.id == "facer_outward"
	asked.no
	asked.slot != told.slot
	_facing(asked) == _facing(told)
}

_facing(said) := split(lower(said.text), " ")[0]

_notes := [finding.related_address(said.at, said.text) |
	some said in input.project.signals
	said.id == "facer_outward"
	said.no
]
