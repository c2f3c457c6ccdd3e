# METADATA
# title: Substrate that the product's data rules out
# description: |
#   The list of substrates in the sheet's data says itself where it does not go ("not on foam", "except OSB").
#   Makers bar a face after failures on it, so the warranty ends there, and what they saw is what the wall looks
#   like in two years. Change the sheet or the face, or get a letter for this job. It does not apply to faces that
#   the list merely leaves out, which are asked about by another rule.
# custom:
#   id: pairing-substrate-barred
#   topic: pairing
#   severity: error
#   reason: The maker of the sheet rules that face out.
#   remedy: Use a sheet whose data lists that face.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "sheet on OSB; its data: wood sheathing except OSB"
package pairing.substrate_barred

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains found if {
	some line in sheet.lines
	bars := [{"bed": bed, "says": a} |
		some bed in sheet.beds_of(line)
		some a in facts.product_of(bed.item).accepts
		a.except
		sheet.takes(a, bed.under) > 1
	]
	count(bars) > 0
	product := facts.product_of(bars[0].bed.item)
	found := finding.at_with(line, ["material", "substrate"], _message(bars[0]), {
		"related": [finding.related_product(product, ["accepts"], "its data on substrates")],
		"facts": sheet.judged([bars[0].bed]),
	})
}

_message(bar) := naming.say("%s goes on %s, which its data rules out (%s)", [
	naming.plain(bar.bed.item),
	bar.bed.under.text,
	bar.says.text,
])
