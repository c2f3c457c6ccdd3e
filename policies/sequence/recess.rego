# METADATA
# title: Flexible flashing ends wrong behind the face
# description: |
#   A flexible through-wall flashing does not bear daylight, so a metal drip edge carries the water out and the sheet
#   is set in sealant on it, about 1/2 in (13 mm) behind the face. Held back much farther, the water leaves the sheet
#   inside the veneer: brick cores begin 3/4 in (19 mm) behind the face. Flush or short with no metal edge, it soaks
#   the course below, which is dark and spalling by the second winter. Good sources differ on flush, so it is a
#   question, unless the notes ask for a drip edge. It does not apply where the row says nothing of the end, to metal
#   flashing, to a sheet cut flush on a drip edge, nor to 6 to 25 mm behind the face on one.
# custom:
#   id: sequence-recess
#   topic: sequence
#   severity: warning
#   reason: Water that leaves the flashing behind the face drains into the veneer instead of out of it.
#   remedy: Set the sheet on a metal drip edge in sealant, about 1/2 in (13 mm) back, or carry it to the face.
#   source: the project's notes; else guide specification wording from memory; masonry handbook and builders' journal
#   basis: common-practice
#   example: "Through-wall flashing at shelf angle: ends 3/4 in short of the brick face, no metal edge"
package sequence.recess

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	said := _end(line)
	item := facts.main_items(line)[0]
	not facts.has_key(item, data.sequence.recess.not_keys)
	_is_in_veneer(line)
	trouble := _trouble(line, said)
	message := naming.say("%s ends %s the face (%s)%s", [
		naming.plain(item),
		_where[said.id],
		words.quoted(said.text),
		trouble.says,
	])
	found := finding.at_with(line, ["material", "tag", said.slot, said.at.cell], message, {"severity": trouble.severity})
}

_where := {"held_back": "behind", "edge_flush": "flush with"}

# _end is what the row says of the end: held back or short, else flush.
_end(line) := told[0] if {
	told := [s |
		some id in ["held_back", "edge_flush"]
		facts.said(line, id)
		some s in line.signals
		s.id == id
		regex.match(data.sequence.recess.face, lower(line.texts[s.slot]))
	]
	count(told) > 0
}

_is_in_veneer(line) if {
	some text in array.concat([line.group, line.place, line.mark], [text | some text in line.texts])
	regex.match(data.sequence.recess.wall, lower(text))
}

_trouble(line, said) := {"severity": "warning", "says": says} if {
	said.id == "held_back"
	_has_drip_edge(line)
	back := line.figures.held_back_mm
	measure.is_sound(back)
	measure.low(back) > data.sequence.recess.most_mm + data.sequence.recess.tolerance_mm
	says := sprintf(", %s back from it on a drip edge; %s", [
		measure.as_said("length", back),
		data.sequence.recess.usual_says,
	])
} else := {"severity": "warning", "says": ", and no metal edge carries the water out"} if {
	said.id == "held_back"
	facts.denied(line, "drip_edge")
} else := {"severity": "warning", "says": ", and no metal edge carries the water out, which the notes ask for"} if {
	said.id == "edge_flush"
	facts.denied(line, "drip_edge")
	facts.project_said("drip_edge")
} else := {"severity": "note", "says": " without a metal edge: see that the water gets out of the veneer"} if {
	said.id == "edge_flush"
	facts.denied(line, "drip_edge")
} else := {"severity": "note", "says": ": see that a metal drip edge carries the water out, none is told"} if {
	not _has_drip_edge(line)
	not facts.denied(line, "drip_edge")
}

# _has_drip_edge holds where words of the row tell of one, or a product it names is one.
_has_drip_edge(line) if facts.said(line, "drip_edge")

_has_drip_edge(line) if {
	some item in line.items
	regex.match(data.sequence.recess.drip, lower(item.name))
}
