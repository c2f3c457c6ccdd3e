# METADATA
# title: Substrate that the product's data does not list
# description: |
#   The data of the sheet lists the faces it was tested on, and this one is not among them. Silence is not
#   acceptance: if the bond fails in two years, the data sheet is the first thing that is read. Ask the maker, or
#   pull a test piece on the face. It does not apply to a lap onto a sheet or a metal flashing, which is no
#   substrate, nor to a face whose kind was not understood, nor to new concrete, whose age is told by itself.
# custom:
#   id: pairing-substrate-unlisted
#   topic: pairing
#   severity: warning
#   reason: The bond on that face was not tested by the maker.
#   remedy: Use a sheet whose data lists that face, or get the maker's letter for it.
#   source: the product's data in this workbook; specifying practice
#   basis: common-practice
#   example: "frame sheet on cast concrete; its data: glass-mat gypsum, plywood and steel"
package pairing.substrate_unlisted

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	beds := [bed | some bed in sheet.beds_of(line); _is_unlisted(bed)]
	count(beds) > 0
	product := facts.product_of(beds[0].item)
	found := finding.at_with(line, ["material", "substrate"], _message(beds, product), {
		"related": [finding.related_product(product, ["accepts"], "its data on substrates")],
		"facts": sheet.judged(beds),
	})
}

_is_unlisted(bed) if {
	product := facts.product_of(bed.item)
	accepts := _faces(product)
	count(accepts) > 0
	every a in accepts { sheet.is_read(a) }
	every a in accepts { not sheet.takes(a, bed.under) }
	_lists_beds(product)
	every t in [t | some t in product.keep_off] { not sheet.takes(t, bed.under) }
	bed.under.family != ""
	not "uncured-cement" in bed.under.keys
	kinds := {kind | some kind in data.pairing.kinds.judged} & sheet.kinds(bed.under.keys)
	count(kinds) > 0
	every kind in kinds { not _is_worded(kind, product) }
}

# An adhesive that it is laid in is no face: the list of those is in the adhesive's own data.
_faces(product) := [a | some a in product.accepts; not _is_adhesive(a)]

_is_adhesive(accepted) if {
	some id in accepted.products
	facts.products_by_id[id].role in {"adhesive", "primer", "sealant"}
}

# A column of primers tells what is primed with what, and leaves out what needs no word.
_lists_beds(product) if {
	some slot in ["accepts", "accepts_primer"]
	product.cells[slot]
}

_is_worded(kind, product) if {
	regex.match(data.pairing.kinds.words[kind], lower(object.get(product.texts, "accepts", "")))
}

_message(beds, product) := naming.say("%s goes on %s, which its data does not list (%s)", [
	naming.plain(beds[0].item),
	words.list([bed.under.text | some bed in beds]),
	words.list([a.text | some a in _faces(product)]),
])
