# METADATA
# title: Note allows more than the product's data
# description: |
#   A note names one product and gives it more days in the sun than its data does. Whoever reads the note leaves the
#   sheet open past what its maker stands for. It does not apply where the note allows less, which is the project's
#   own stricter rule, nor to notes for a class of sheets.
# custom:
#   id: data-note-contradiction
#   topic: data
#   severity: warning
#   reason: Two figures stand for one limit, and the crew goes by the one it reads first.
#   remedy: Take the figure of the product's own sheet, and correct the other.
#   source: the workbook's own product data
#   basis: source-read
#   example: "note: FM-3 may stay open 90 days; data of FM-3: 60 days"
package data.note_contradiction

import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.words

findings contains finding.for_address(limit.at, message, {"related": [related]}) if {
	some limit in input.project.limits
	limit.kind == "exposure_days"
	not limits.is_letter(limit)
	product := _named(limit)
	told := product.figures.exposure_days
	measure.is_sound(told)
	limit.max > measure.high(told)
	message := sprintf("the note allows %s %s in the sun, but its data says %s", [
		product.tag,
		words.days(limit.max),
		words.days(measure.high(told)),
	])
	related := finding.related_product(product, measure.cell(told, "exposure_days"), "its data")
}

# The note means one product, and names it by its tag.
_named(limit) := meant[0] if {
	meant := [product |
		some product in input.products
		not product.repeats
		regex.match(sprintf(`(?i)(^|[^\w-])%s([^\w-]|$)`, [_quoted(product.tag)]), limit.text)
	]
	count(meant) == 1
	count(limit.keys) == 1
	some key in limit.keys
	key in {meant[0].id, meant[0].family}
}

# Only signs of ASCII may stand behind a stroke in a pattern; others ("SA–1") mean themselves.
_quoted(tag) := regex.replace(tag, `([[:punct:]])`, `\$1`)
