# METADATA
# title: Other primer chemistry
# description: |
#   A primer of another carrier (solvent for water, or the reverse) is offered. Where the data of the row's sheet
#   lists the offered primer, that settles it and is told as a note. Else nothing shows that sheet and primer fit,
#   and in two years both may be off the wall; a solvent also reaches foam, cold weather and VOC limits in another
#   way than water does. It does not apply to another primer of the same carrier.
# custom:
#   id: substitution-primer
#   topic: substitution
#   severity: warning
#   reason: Sheet, primer and substrate are tested together; another carrier changes bond, drying, foam safety and VOC.
#   remedy: Go back to the specified primer, or show the offered one in the data of the sheet for this substrate.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a toluene primer offered for the water-borne primer of the sheet"
package substitution.primer

import data.lib.facts
import data.lib.swap
import data.lib.words

findings contains found if {
	some one in swap.all
	_is_primer(one.swap)
	was := _carriers(one.swap.was)
	now := _carriers(one.swap.now)
	count(was) > 0
	count(now) > 0
	count(was & now) == 0
	listed := _listed(one)
	message := sprintf("%s is %s, %s is %s, %s", [
		one.swap.now.text,
		words.list(sort(now)),
		one.swap.was.text,
		words.list(sort(was)),
		_lists[listed],
	])
	found := swap.at(one, message, _severity[listed])
}

_is_primer(s) if s.was.class == "primer"

_is_primer(s) if s.now.class == "primer"

_carriers(offer) := {key | some key in offer.keys; key in data.substitution.chemistry.carriers}

_severity := {true: "note", false: "warning"}

_lists := {
	true: "and the data of the sheet lists it",
	false: "and nothing shows that the sheet takes it",
}

default _listed(_) := false

_listed(one) if {
	some item in facts.main_items(one.line)
	some accepted in facts.product_of(item).accepts
	not accepted.except
	some primer in accepted.primers
	primer in {one.swap.now.product, one.swap.now.tag, one.swap.now.text}
}
