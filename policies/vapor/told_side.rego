# METADATA
# title: A strip on the other side of the wall than its data says
# description: |
#   Strips around windows come in pairs: the tight one goes on the room side, the open one on the weather side. Put
#   on the other way round, room air gets into the joint and cannot get out; after two winters the foam is wet and
#   the reveal moldy. Told where the product data names a side and the row names the other. It does not apply to
#   data or rows that name no side or both, nor to parapets, upstands and shafts, whose inner face is outdoors.
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
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	off := _wrong(line)
	count(off) > 0
	message := sprintf("%s, by its data for the %s side, goes on the %s side (%s)", [
		words.list([one.item.text | some one in off]),
		off[0].meant,
		off[0].put,
		words.quoted(off[0].text),
	])
	found := finding.at_with(line, array.concat(["material", "tag"], [one.item.at.cell | some one in off]), message, {
		"related": [finding.related_product(one.product, ["type", "material"], "its data on the side") | some one in off],
		"facts": [one.item.id | some one in off],
	})
}

# All that the row puts on one wrong side; where two strips are changed round, those of the first.
_wrong(line) := [one |
	all := _off(line)
	some one in all
	one.meant == all[0].meant
]

_off(line) := [{"item": item, "product": product, "meant": meant, "put": put.side, "text": put.text} |
	some item in facts.main_items(line)
	product := facts.product_of(item)
	meant := _side(concat(" ", [object.get(product.texts, slot, "") | some slot in ["type", "material"]]))
	not _is_excused(line)
	put := _put(line, item)
	put.side != meant
]

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
