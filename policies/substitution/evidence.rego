# METADATA
# title: Proof missing
# description: |
#   The offer comes without what the specified product has: a test report that is still to come, a figure that its
#   data leaves out, or another test than the usual one. What is not shown before the order is not shown after two
#   years either. It does not apply to a figure that the data of the submittal gives for none of its products,
#   nor to a neighbor that has rows of its own, where it is told.
# custom:
#   id: substitution-evidence
#   topic: substitution
#   severity: warning
#   reason: Without report and figure nothing shows that the offer is equal.
#   remedy: Ask for the report and the figure before the product is accepted.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "test report to follow, no air permeance stated"
package substitution.evidence

import data.lib.finding
import data.lib.swap

findings contains found if {
	some one in swap.at_its_own_rows
	one.swap.was.data
	one.swap.now.data
	not one.swap.same
	tests := array.concat(_test(one.swap), _unnamed(one.swap))
	lacks := array.concat(_report(one.swap), array.concat(tests, _figures(one)))
	count(lacks) > 0
	parts := [l.text | some l in lacks]
	found := swap.at(one, swap.sentence(one.swap, parts), finding.worst([l.severity | some l in lacks]))
}

_report(s) := [{"severity": "warning", "text": sprintf("its test report is \"%s\"", [texts[0]])}] if {
	texts := [t | some t in _proof(s.now); _pending(t)]
	count(texts) > 0
	count([t | some t in _proof(s.was); _pending(t)]) == 0
} else := []

_test(s) := [{"severity": "warning", "text": wrong[0].says}] if {
	wrong := _wrong(s.now)
	count(wrong) > 0
	count(_wrong(s.was)) == 0
} else := []

# The specified figure comes with its test, the offered one without, though the submittal names the test for others.
_unnamed(s) := [{"severity": "warning", "text": "its air permeance comes without the test that it was found by"}] if {
	some f in s.figures
	f.kind == "air_lsm2"
	f.order in {"equal", "lower", "higher"}
	_right(s.was)
	not _right(s.now)
	count(_wrong(s.now)) == 0
	count([t | some t in _proof(s.now); _pending(t)]) == 0
	some product in input.products
	_right(product)
} else := []

_right(offer) if {
	some text in _proof(offer)
	regex.match(data.performance.air.tests.right, lower(text))
}

_figures(one) := [{"severity": severity, "text": text} |
	some f in one.swap.figures
	f.order == "missing"
	not _is_bead(one, f)
	severity := _weight(one, f)
	f.kind in _told
	text := sprintf("its data gives no %s", [data.substitution.properties[f.kind].name])
]

# A bead in its joint is not told by days in the sun.
_is_bead(one, f) if {
	f.kind == "exposure_days"
	one.swap.was.class in {"sealant", "mastic", "primer"}
}

# What a primer or bead leaves out is worth knowing; what the sheet leaves out is asked for.
_weight(one, f) := data.substitution.missing[f.kind] if {
	one.swap.slot in {"material", "tag"}
} else := "note"

_proof(offer) := [text | some slot in ["report", "air_test", "air"]; text := offer.texts[slot]]

_pending(text) if regex.match(data.performance.air.pending, lower(text))

_wrong(offer) := [test |
	some text in _proof(offer)
	not regex.match(data.performance.air.tests.right, lower(text))
	some test in data.performance.air.tests.wrong
	regex.match(test.words, lower(text))
]

# Properties that the data of the submittal gives for some product.
_told := {kind |
	some product in input.products
	some kind, figure in product.figures
	figure.problem == ""
}
