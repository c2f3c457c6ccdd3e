# METADATA
# title: Other chemistry
# description: |
#   The offered material is of another chemistry than the specified one (butyl for asphalt, acrylic for butyl).
#   Primer, sealant, roof and foam were chosen for the old one; each pairing has to be looked at anew, or in two
#   years the new one has softened, or let go of, the neighbor that suited the old. The rules on contacts and
#   pairings look at those the schedule tells; the maker's letter covers the rest. A fluid in place of a sheet of
#   the same chemistry is told too, and a sealant of another kind: as a note, and as a warning where the offered
#   kind is the lesser one (acid-cure for neutral-cure). It does not apply to materials whose chemistry is not told.
# custom:
#   id: substitution-chemistry
#   topic: substitution
#   severity: warning
#   reason: Primers, sealants and neighbors that suit one adhesive may not hold on, or may attack, another.
#   remedy: Have the maker of the offered sheet list primer, sealants and neighbors of this detail in writing.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "an SBS strip offered for a butyl strip under a coping"
package substitution.chemistry

import data.lib.naming
import data.lib.swap
import data.lib.words

findings contains found if {
	some one in swap.own
	not one.swap.same
	was := swap.stuff(one.swap.was)
	now := swap.stuff(one.swap.now)
	count(was) > 0
	count(now) > 0
	count(was & now) == 0
	message := sprintf("%s is %s, %s is %s: primer, sealants and neighbors of this row were chosen for the other", [
		naming.sentence(one.swap.now.text),
		words.list(sort(now)),
		one.swap.was.text,
		words.list(sort(was)),
	])
	found := swap.at(one, message, "note")
}

# One is a sheet, the other is rolled or sprayed on: thickness, weather and detailing are others.
findings contains found if {
	some one in swap.own
	not one.swap.same
	forms := {"was": _form(one.swap.was), "now": _form(one.swap.now)}
	forms.was != forms.now
	count(swap.stuff(one.swap.was) & swap.stuff(one.swap.now)) > 0
	message := sprintf("%s is %s, %s is %s", [
		naming.sentence(one.swap.now.text),
		forms.now,
		one.swap.was.text,
		forms.was,
	])
	found := swap.at(one, message, "warning")
}

# A bead of another kind: what it meets was chosen for the specified one.
findings contains found if {
	some one in swap.all
	not one.swap.same
	was := _bead(one.swap.was)
	now := _bead(one.swap.now)
	was.kinds & now.kinds == set()
	message := sprintf("%s is %s, %s is %s: what the joint meets was chosen for the other", [
		naming.sentence(one.swap.now.text),
		words.list(sort(now.names)),
		one.swap.was.text,
		words.list(sort(was.names)),
	])
	found := swap.at(one, message, _bead_severity(was, now))
}

_bead(offer) := {"kinds": kinds, "names": names} if {
	offer.class == "sealant"
	kinds := {key | some key in offer.keys; data.substitution.chemistry.sealants[key]}
	count(kinds) > 0
	names := {data.substitution.chemistry.sealants[key] | some key in kinds}
}

_bead_severity(was, now) := "warning" if {
	count(now.kinds & _lesser) > 0
	count(was.kinds & _lesser) == 0
} else := "note"

_lesser := {key | some key in data.substitution.chemistry.lesser}

_form(offer) := "put on as a fluid" if offer.family in data.substitution.chemistry.fluids

_form(offer) := "a sheet" if {
	offer.family != ""
	not offer.family in data.substitution.chemistry.fluids
}
