# METADATA
# title: Primer cell empty where the product needs one
# description: |
#   The data sheet asks for a primer on that substrate and the row leaves the cell empty. The crew reads an empty
#   cell as none, and the sheet comes off with the dust of the wall on its back within two years. Name the primer,
#   or say that none is needed and who says so. A cell that leaves it open ("TBD", "?") is asked about, also where
#   only the data of a primer says that it is made for the product. It does not apply to a row that is said to be
#   primed earlier, or that has a priming date.
# custom:
#   id: pairing-primer-blank
#   topic: pairing
#   severity: error
#   reason: The product needs a primer on that substrate, and the crew reads an empty cell as none.
#   remedy: Fill in one of the primers that the product's data lists for that substrate.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "SAF-4 on CMU, primer cell empty; its data: always with PR-1 or PR-2"
package pairing.primer_blank

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	primer.state(line) == "blank"
	beds := [bed | some bed in sheet.beds_of(line); primer.needed(primer.asked(bed))]
	count(beds) > 0
	product := facts.product_of(beds[0].item)
	found := finding.at_with(line, ["material", "substrate", "primer"], _message(beds), {
		"related": [finding.related_product(product, ["accepts"], "its data on substrates and primers")],
		"facts": sheet.judged(beds),
	})
}

# A cell that leaves the primer to others names none, where the data asks for one of several by name.
findings contains found if {
	some line in sheet.lines
	primer.state(line) in {"unclear", "named"}
	every signal in data.pairing.primer.primed_signals { not facts.said(line, signal) }
	every item in primer.named(line) { _is_only_a_word(item) }
	cell := lower(trim_space(object.get(line.texts, "primer", "")))
	regex.match(data.pairing.primer.left_open, cell)
	beds := [bed | some bed in sheet.beds_of(line); primer.needed(primer.asked(bed))]
	count(beds) > 0
	count(primer.asked(beds[0]).primers) > 0
	product := facts.product_of(beds[0].item)
	message := naming.say("the primer of %s on %s is left open (\"%s\"), where its data asks for %s", [
		naming.plain(beds[0].item),
		words.list([bed.under.text | some bed in beds]),
		trim_space(line.texts.primer),
		primer.choice(primer.asked(beds[0])),
	])
	found := finding.at_with(line, ["material", "substrate", "primer"], message, {
		"severity": "warning",
		"related": [finding.related_product(product, ["accepts"], "its data on substrates and primers")],
		"facts": sheet.judged(beds),
	})
}

# The data of the sheet asks for none, but that of a primer says that it is for this very sheet.
findings contains found if {
	some line in facts.live_lines
	primer.state(line) in {"unclear", "named"}
	every signal in data.pairing.primer.primed_signals { not facts.said(line, signal) }
	every named in primer.named(line) { _is_only_a_word(named) }
	cell := lower(trim_space(object.get(line.texts, "primer", "")))
	regex.match(data.pairing.primer.left_open, cell)
	item := facts.main_items(line)[0]
	not primer.has_data(item)
	not _is_of_matrix(line)
	made := [product |
		some product in input.products
		product.role == "primer"
		some suit in product.suits
		not suit.except
		item.product in suit.products
	]
	count(made) > 0
	under := [face |
		some face in facts.items_in(line, ["substrate"])
		facts.has_key(face, data.pairing.primer.mineral_keys)
	]
	count(under) > 0
	message := naming.say("the primer of %s on %s is left open (\"%s\"), and %s is made for it", [
		naming.plain(item),
		words.list([face.text | some face in under]),
		trim_space(line.texts.primer),
		concat(" or ", sort([product.tag | some product in made])),
	])
	found := finding.at_with(line, ["material", "substrate", "primer"], message, {
		"severity": "warning",
		"related": [finding.related_product(made[0], ["type"], "its data")],
	})
}

# The usual matrix tells of a sheet that goes there without one.
_is_of_matrix(line) if {
	some bed in sheet.beds_of(line)
	primer.usual(bed) in data.pairing.primer.needs
}

# "primer per mfr." names none.
_is_only_a_word(item) if {
	item.product == ""
	item.family in {"", "primer-unspecified"}
}

_message(beds) := naming.say("no primer is given for %s on %s, where its data asks for %s", [
	naming.plain(beds[0].item),
	words.list([bed.under.text | some bed in beds]),
	primer.choice(primer.asked(beds[0])),
])
