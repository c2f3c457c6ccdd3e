# METADATA
# title: Flashing tested by the standard of another kind
# description: |
#   The data of a liquid flashing tells of the standard for self-adhered flashing, or the other way round. Crack
#   bridging and film of a liquid are not tested by the one, peel and nail seal of a tape not by the other, so
#   nothing is shown for the product. It does not apply where both are told.
# custom:
#   id: performance-flashing-standard
#   topic: performance
#   severity: error
#   reason: The standard does not test what this kind of flashing must do, so nothing is shown for it.
#   remedy: Ask for the report by the standard of its kind, or take a product that has one.
#   source: titles of AAMA 711 and AAMA 714
#   basis: source-read
#   example: "Liquid flashing; tests: AAMA 711"
package performance.flashing_standard

import data.lib.finding
import data.lib.naming
import data.lib.uses

findings contains found if {
	some product in input.products
	some test in data.performance.films.tests
	test.is == _kind(product)
	texts := {slot: lower(product.texts[slot]) | some slot in data.performance.films.slots}
	some slot, text in texts
	regex.match(test.cites, text)
	every other in texts { not contains(other, test.unless) }
	message := naming.say("%s is shown by \"%s\"; %s", [product.tag, product.texts[slot], test.says])
	found := finding.for_product(product, [slot], message, {"related": uses.related(uses.of(product), 0)})
}

_kind(product) := "liquid" if {
	regex.match(data.performance.films.applied, product.family)
} else := "sheet" if {
	product.class in data.performance.films.sheets
}
