# METADATA
# title: Said to go on without the primer that its data asks for
# description: |
#   The data sheet of the sheet lists a primer for that substrate, and the row says none. Dust and glass fibers
#   hold the adhesive instead of the wall; it rolls down nicely and falls off behind the insulation in its first
#   or second winter. It does not apply where the data says that the face needs none (butyl on clean metal, an
#   acrylic sheet on plywood).
# custom:
#   id: pairing-primer-none
#   topic: pairing
#   severity: error
#   reason: Without its primer the adhesive holds dust or loose fibers and not the wall.
#   remedy: Name one of the primers that the product's data lists for that substrate.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "AB-1 on glass-mat gypsum, primer: -; its data lists PR-1 or PR-2 there"
package pairing.primer_missing

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in array.concat(sheet.lines, _metal)
	primer.state(line) == "none"
	all := array.concat(sheet.beds_of(line), sheet.beds_with(line))
	beds := [bed | some bed in all; primer.needed(primer.asked(bed))]
	count(beds) > 0
	product := facts.product_of(beds[0].item)
	found := finding.at_with(line, ["material", "substrate", "primer"], _message(line, beds), {
		"related": [finding.related_product(product, ["accepts"], "its data on substrates and primers")],
		"facts": sheet.judged(beds),
	})
}

# A metal flashing with an adhesive on its back is asked about where its data names primers.
_metal := [line |
	some line in facts.live_lines
	line.role in data.pairing.chemistry.metal_roles
]

_message(line, beds) := naming.say("%s goes on %s without primer (%s), but its data asks for %s there", [
	naming.plain(beds[0].item),
	words.list(_once([bed.under.text | some bed in beds])),
	primer.cell(line),
	primer.choice(primer.asked(beds[0])),
])

_once(names) := [name |
	some i, name in names
	not name in array.slice(names, 0, i)
]
