# METADATA
# title: Air figure by the wrong test
# description: |
#   The figure of a sheet is told by the test of a material. Window tests, assembly tests and building tests
#   measure something else, at limits ten or a hundred times higher, so their numbers cannot be held against the
#   limit of a sheet; the leak shows in a blower-door test or two winters later. It does not apply to a cell that
#   names the right test beside another.
# custom:
#   id: performance-air-test-method
#   topic: performance
#   severity: warning
#   reason: The number of another test cannot be held against the limit of a material.
#   remedy: Ask for the report by ASTM E2178 (or the same test under its Canadian or European number).
#   source: ASTM E2178 for materials, E2357 for assemblies (IECC C402.5)
#   basis: source-read
#   example: "AB-2: 0.002 cfm/ft², air test: ASTM E283"
package performance.test_method

import data.lib.air
import data.lib.facts
import data.lib.finding
import data.lib.uses

findings contains found if {
	some product in input.products
	wrong := _wrong(product.texts.air_test)
	air.is_sheet(product, product.role)
	used := uses.main(product)
	count(used) > 0
	found := finding.for_product(product, ["air_test"], _message(product.tag, product.texts.air_test, wrong), {
		"related": uses.related(used, 0),
	})
}

findings contains finding.at(line, ["air_test"], _message(item.text, line.texts.air_test, wrong)) if {
	some line in facts.live_lines
	wrong := _wrong(line.texts.air_test)
	item := facts.main_items(line)[0]
	air.is_sheet(item, line.role)
}

_wrong(text) := hits[0] if {
	not regex.match(data.performance.air.tests.right, lower(text))
	hits := [one | some one in data.performance.air.tests.wrong; regex.match(one.words, lower(text))]
	count(hits) > 0
}

_message(name, text, wrong) := sprintf(
	"the air permeance of %s is told by \"%s\"; %s, and a sheet is judged by E2178",
	[name, text, wrong.says],
)
