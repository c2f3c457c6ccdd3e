# METADATA
# title: A strip on the other side of the wall than its data says
# description: |
#   Strips around windows come in pairs: the tight one goes on the room side, the open one on the weather side. Put
#   on the other way round, room air gets into the joint and cannot get out; after two winters the foam is wet and
#   the reveal moldy. Told where the product data names a side and the row names the other; of the film that keeps the
#   vapor of the room back the notes may name it. It does not apply to data or rows that name no side or both, to
#   parapets, upstands and shafts, whose inner face is outdoors, nor to a warm side where that may be the outer one:
#   around rooms that are kept cold, and where winters are mild.
# custom:
#   id: vapor-told-side
#   topic: vapor
#   severity: error
#   reason: A tight strip outside holds the water that an open strip inside lets in.
#   remedy: Change the two round; tighter inside than outside.
#   source: common practice (window joints are tighter inside than outside)
#   basis: common-practice
#   example: "JS-1, by its data for the room side, on the outer face of the frame"
package vapor.told_side

import data.lib.facts
import data.lib.finding
import data.lib.winter
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	off := _wrong(line)
	count(off) > 0
	not line.id in _cold_lines
	message := sprintf("%s, by %s for the %s side, goes on the %s side (%s)", [
		words.list([one.item.text | some one in off]),
		off[0].by,
		off[0].meant,
		off[0].put,
		words.quoted(off[0].text),
	])
	found := finding.at_with(line, array.concat(["material", "tag"], [one.item.at.cell | some one in off]), message, {
		"related": [one.related | some one in off],
		"facts": [one.item.id | some one in off],
	})
}

# A film outside of filled studs is one mistake, and told as such.
_cold_lines := {found.line | some found in data.vapor.cold_side.findings}

# All that the row puts on one wrong side; where two strips are changed round, those of the first.
_wrong(line) := [one |
	all := _off(line)
	some one in all
	one.meant == all[0].meant
]

_off(line) := [object.union(told, {"item": item, "put": put.side, "text": put.text}) |
	some item in facts.main_items(line)
	told := _meant(item)
	not _is_excused(line)
	not _may_be_outside(line, told.says)
	put := _put(line, item)
	put.side != told.meant
]

# Its data says it; of the film that keeps room vapor back the notes may: {"meant", "by", "says", "related"}.
_meant(item) := told if {
	product := facts.product_of(item)
	text := concat(" ", [object.get(product.texts, slot, "") | some slot in data.vapor.told.product_slots])
	told := {
		"meant": _side(text),
		"by": "its data",
		"says": text,
		"related": finding.related_product(product, data.vapor.told.product_slots, "its data on the side"),
	}
} else := _noted if {
	item.family in data.vapor.barriers.inside_families
}

_noted := told[0] if {
	told := [{
		"meant": _side(sentence),
		"by": "the notes",
		"says": sentence,
		"related": finding.related_address(note.at, note.text),
	} |
		some note in input.project.notes
		some sentence in regex.split(`[.;]\s`, note.text)
		regex.match(data.vapor.told.barriers, lower(sentence))
	]
	count({one.meant | some one in told}) == 1
}

# The warm side is the outer one of a cold room, and may be in a mild winter.
_may_be_outside(line, says) if {
	regex.match(data.vapor.told.by_warmth, lower(says))
	_is_warm_outside(line)
}

_is_warm_outside(_) if winter.celsius >= data.vapor.climate.warm_c

_is_warm_outside(line) if {
	some text in [line.place, line.group, object.get(line.texts, "substrate", ""), object.get(line.texts, "remark", "")]
	regex.match(data.vapor.cold_rooms.words, lower(text))
}

# The words around the strip itself are heard before those of the row.
_put(line, item) := {"side": side, "text": item.clause} if {
	side := _side(item.clause)
} else := {"side": side, "text": said[0]} if {
	said := [text | some slot in ["place", "substrate"]; text := object.get(line.texts, slot, ""); _side(text)]
	side := _side(said[0])
	every text in said { _side(text) == side }
}

_side(text) := sides[0] if {
	sides := [side | some side, pattern in data.vapor.told.sides; regex.match(pattern, lower(text))]
	count(sides) == 1
}

_is_excused(line) if {
	some text in [line.place, object.get(line.texts, "substrate", "")]
	regex.match(data.vapor.told.outdoors, lower(text))
}
