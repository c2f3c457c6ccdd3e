# METADATA
# title: Under water with a product whose data says it is not for that
# description: |
#   Water that stands on a joint goes into most sealants and coatings: they swell, let go of the face and soften, and
#   pool water brings chlorine besides. The data of some products says itself that they are not for immersion; the row
#   puts one of them where it stays under water. The pool is emptied to mend it. It does not apply to rows that no
#   word puts under water, to a basin that only holds rain for hours, nor to products whose data says nothing of it.
# custom:
#   id: pairing-immersed
#   topic: pairing
#   severity: error
#   reason: The maker keeps the product out of standing water, and the row puts it there.
#   remedy: Use a product listed for immersion in that water, such as a pool grade, with the primer that it asks for.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "S-4 in joints of a pool tank, immersed; its data: not immersed"
package pairing.immersed

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	some item in facts.main_items(line)
	barred := _barred[item.product]
	product := facts.product_of(item)
	slot := [slot | some slot in data.pairing.immersed.slots; _is_wet(line, slot)][0]
	message := naming.say("%s stays under water there; its data says %s", [
		naming.plain(item),
		words.quoted(barred[0].text),
	])
	found := finding.at_with(line, ["material", "tag", slot], message, {"related": [finding.related_product(
		product,
		[barred[0].slot],
		"its data on immersion",
	)]})
}

# _barred holds by the ID of a product where its data keeps it out of water.
_barred := {product.id: barred |
	some product in input.products
	barred := [{"slot": slot, "text": said[0]} |
		some slot, text in product.texts
		said := regex.find_all_string_submatch_n(data.pairing.immersed.barred, lower(text), 1)[0]
	]
	count(barred) > 0
}

_is_wet(line, slot) if {
	text := lower(object.get(line.texts, slot, ""))
	regex.match(data.pairing.immersed.wet, text)
	not regex.match(data.pairing.immersed.dry, text)
}
