# METADATA
# title: A primer that is not one of the sheet's own
# description: |
#   Sheet and primer are a system. A butyl primer under an asphaltic sheet stays slick, an acrylic one under it
#   dries to a skin that peels; in two years the sheet is off with the primer on its back. Either the sheet's data
#   lists other primers for that substrate, or the primer's data is for other sheets. It does not apply where one
#   of several primers in the row fits, as the others are for other faces, unless the row has a primer for each
#   side; solvent on foam and solvent under an acrylic sheet have rules of their own.
# custom:
#   id: pairing-primer-wrong
#   topic: pairing
#   severity: error
#   reason: The sheet's adhesive is not made for that primer, so one of the two bonds fails.
#   remedy: Use a primer that the sheet's data lists for that substrate, or get both makers' letter.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "FM-1 over P-4 on CMU; the data of P-4 is for FM-3 and FM-5 only"
package pairing.primer_wrong

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.primer_fit
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in array.concat(sheet.lines, _backed)
	primers := [p | some p in primer.named(line); not _is_of_joint(p)]
	beds := sheet.beds_of(line)
	every bed in beds { not primer_fit.own_rule(bed, primer.on(bed, primers)) }
	problems := [p | some bed in beds; p := primer_fit.problem(bed, primer.on(bed, primers))]
	count(problems) > 0
	cells := array.concat(["material", "primer", "substrate"], _cells_of(line, problems[0]))
	found := finding.at_with(line, cells, _message(primer.on(problems[0].bed, primers), problems[0]), {"related": [
		finding.related_product(problems[0].by, problems[0].slots, "its data"),
	]})
}

# Metal with an adhesive back, whose data lists its primers, is stuck as a sheet is.
_backed := [line |
	some line in facts.live_lines
	line.role in data.pairing.chemistry.metal_roles
	some a in facts.product_of(sheet.own(line)).accepts
	a.primer == "listed"
]

# "P-4 at joints" is under the sealant of those, and not under the sheet.
_is_of_joint(item) if regex.match(data.pairing.primer.at_joints, lower(object.get(item, "clause", "")))

# The cells of the side at fault, where the row has a primer for each side.
_cells_of(line, problem) := [cell |
	some item in primer.on(problem.bed, primer.named(line))
	item.primes
	some cell in [item.at.cell, item.primes]
]

_message(primers, problem) := naming.say("%s %s put under %s on %s, but %s", [
	words.list([p.text | some p in primers]),
	words.be(primers),
	naming.plain(problem.bed.item),
	problem.bed.under.text,
	problem.why,
])
