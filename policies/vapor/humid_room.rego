# METADATA
# title: Film or sheet at a humid room that it is not for
# description: |
#   A vapor retarder that opens as the air gets humid stands open all winter at a pool or a sauna, and the room's
#   moisture goes through it into the wall; by the second winter the sheathing is wet. The data of some products says
#   itself that they are not for humid rooms, which is an error; of a responsive film without such a word it is asked.
#   It does not apply to rooms that only lie beside such a room, to pool decks and outdoor pools, nor to products whose
#   data bars another kind of room.
# custom:
#   id: vapor-humid-room
#   topic: vapor
#   severity: error
#   reason: The room is humid all winter, and so the film is open when it should be tight.
#   remedy: Use a film of fixed class I permeance there, lapped and sealed, or have the wall computed for that room.
#   source: the product's data in this workbook; common practice of indoor pools
#   basis: common-practice
#   example: "variable film on the studs of the swimming pool; its data: not for humid rooms"
package vapor.humid_room

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at_with(line, ["material", "tag", room.slot], message, extra) if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	told := _barred(item)
	room := [r | some r in _rooms(line); r.kind in told.kinds][0]
	message := naming.say("%s goes at a humid room (%s); %s", [naming.plain(item), words.quoted(room.text), told.says])
	extra := {"severity": told.severity, "related": told.related}
}

# _rooms lists what the row tells of humid rooms: {"kind", "slot", "text"}.
_rooms(line) := [{"kind": kind, "slot": slot, "text": text} |
	some slot in data.vapor.humid_rooms.slots
	text := object.get(line.texts, slot, "")
	some kind, pattern in data.vapor.humid_rooms.kinds
	regex.match(pattern, lower(text))
	not regex.match(data.vapor.humid_rooms.beside, lower(text))
]

# _barred is what keeps the item from such rooms: its data, or what is known of its kind.
_barred(item) := told if {
	said := _said[item.product]
	told := {
		"kinds": said.kinds,
		"says": sprintf("its data says %s", [words.quoted(said.text)]),
		"severity": "error",
		"related": [finding.related_product(facts.product_of(item), [said.slot], "its data on rooms")],
	}
} else := told if {
	item.family in data.vapor.humid_rooms.responsive.families
	told := {
		"kinds": data.vapor.humid_rooms.responsive.kinds,
		"says": "such a film is open where the air is humid",
		"severity": "warning",
		"related": [],
	}
}

_said := {product.id: said[0] |
	some product in input.products
	said := [{"slot": slot, "text": sentence, "kinds": kinds} |
		some slot, text in product.texts
		some sentence in regex.split(`[.;]\s*`, text)
		regex.match(data.vapor.humid_rooms.bars, lower(sentence))
		kinds := _kinds(lower(sentence))
		count(kinds) > 0
	]
	count(said) > 0
}

_kinds(sentence) := {kind | some kind, _ in data.vapor.humid_rooms.kinds} if {
	regex.match(data.vapor.humid_rooms.humid, sentence)
} else := {kind |
	some kind, pattern in data.vapor.humid_rooms.named
	regex.match(pattern, sentence)
}
