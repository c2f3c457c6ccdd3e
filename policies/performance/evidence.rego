# METADATA
# title: Air permeance not shown
# description: |
#   The project limits the air permeance of its sheets, and the data of this one has no figure, or its report is
#   "to follow". The promise is worth nothing once the sheet is on the wall: two years later, when drafts are
#   complained of, there is no report to hold it against. Ask for the ASTM E2178 report before the order. It does
#   not apply to rows said not to be the air barrier, to waterproofing of decks and below grade, nor to product data
#   that tells no air figure of any sheet; a figure is not missed at strips, flashings and sheets for under metal.
# custom:
#   id: performance-air-evidence
#   topic: performance
#   severity: warning
#   reason: The project limits air permeance, and nothing shows that this sheet keeps the limit.
#   remedy: Ask for the test report before the sheet is accepted.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "AB-6: air permeance blank, report to follow"
package performance.evidence

import data.lib.air
import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.uses

findings contains found if {
	_data_tells_air
	some product in input.products
	air.is_sheet(product, product.role)
	not product.family in data.performance.air.unasked_families
	lack := _lack(product)
	asked := [use |
		some use in uses.main(product)
		not facts.said(use.line, "not_air_barrier")
		not limits.is_of_ground(use.line)
		count(limits.limits_for("air_lsm2", use.line, product.keys, product.role)) > 0
	]
	count(asked) > 0
	limit := limits.limits_for("air_lsm2", asked[0].line, product.keys, product.role)[0]
	found := finding.for_product(product, ["air", "report", "air_test"], _message(product, lack), {
		"related": array.concat(uses.related(asked, 0), [finding.related_address(limit.at, limit.text)]),
	})
}

_data_tells_air if {
	some product in input.products
	_has_figure(product)
}

# A report that is still to come is told before a missing figure.
_lack(product) := sprintf("its test report is \"%s\"", [pending[0]]) if {
	pending := [text |
		some slot in ["report", "air_test", "air"]
		text := product.texts[slot]
		regex.match(data.performance.air.pending, lower(text))
	]
	count(pending) > 0
} else := "its data gives no figure" if {
	product.role in data.performance.sheets.shown_roles
	not facts.has_key(product, data.performance.sheets.shown_not_keys)
	not _has_figure(product)
	not _is_left_out(product)
}

# The data says that what it leaves empty does not apply.
_is_left_out(product) if {
	some note in input.project.notes
	regex.match(data.performance.air.left_out, lower(note.text))
	trim_space(object.get(product.texts, "air", "")) == ""
}

_has_figure(product) if product.figures.air_lsm2.min != null

_has_figure(product) if product.figures.air_lsm2.max != null

_message(product, lack) := sprintf("nothing shows that %s keeps the project's limit on air permeance: %s", [
	product.tag,
	lack,
])
