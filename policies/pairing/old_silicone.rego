# METADATA
# title: Old silicone left on the face
# description: |
#   Nothing but silicone holds on silicone, and no primer changes that: the oil that bleeds out of the old bead is
#   a release film. The sheet or the new bead peels off along it by the first winter, and water runs down the strip.
#   Cut it out and grind the face until a drop of water spreads. So does a tape that is put on a bead of silicone once
#   that has cured. It does not apply to silicone sheets and sealants, nor where the row says that the old bead comes
#   off, nor to a cured bead that the product's own data lists as a bed.
# custom:
#   id: pairing-old-silicone
#   topic: pairing
#   severity: error
#   reason: Adhesive, primer and other sealants do not hold on cured silicone.
#   remedy: Cut out the old bead, grind the face to sound substrate and wipe it before priming.
#   source: "common practice: old silicone is taken off by grinding before anything else is stuck or primed"
#   basis: common-practice
#   example: "substrate: block, old silicone fillet not removed; material: butyl sheet"
package pairing.old_silicone

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.target
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	line.role in array.concat(data.pairing.chemistry.roles, ["sealant"])
	own := facts.main_items(line)[0]
	not facts.has_key(own, ["silicone"])
	left := [item |
		some item in facts.items_in(line, ["substrate", "remark"])
		_is_bead(item, line)
		facts.has_key(item, ["silicone"])
		"left_on" in item.signals
	]
	count(left) > 0
	message := naming.say("%s goes over silicone that is left on the face (%s)", [
		naming.plain(own),
		words.quoted(left[0].clause),
	])
	found := finding.at_with(line, ["material", "tag", left[0].at.cell], message, {"facts": [own.id, left[0].id]})
}

# The bed of the sheet or tape is a bead of silicone that has cured.
findings contains found if {
	some line in facts.live_lines
	line.role in data.pairing.chemistry.roles
	own := facts.main_items(line)[0]
	_is_stuck(own)
	bed := _silicone_bed(line, own)[0]
	message := naming.say("%s goes on cured silicone (%s), on which only silicone holds", [
		naming.plain(own),
		words.quoted(bed.clause),
	])
	found := finding.at_with(line, ["material", "tag", bed.at.cell], message, {"facts": [own.id, bed.id]})
}

_is_stuck(own) if {
	not facts.has_key(own, ["silicone"])
	some glue in data.pairing.chemistry.order
	facts.has_key(own, glue.keys)
}

_silicone_bed(line, own) := [item |
	some item in facts.items_in(line, ["substrate"])
	facts.is_there(item)
	item.class == "sealant"
	facts.has_key(item, ["silicone"])
	not "left_on" in item.signals
	clause := lower(item.clause)
	regex.match(data.pairing.chemistry.silicone_bed, clause)
	not regex.match(data.pairing.chemistry.not_silicone_bed, clause)
	not _is_listed(own, item)
]

_is_listed(own, bed) if {
	product := facts.product_of(own)
	some listed in array.concat(product.accepts, product.suits)
	target.means(listed, bed)
}

_is_bead(item, _) if item.class == "sealant"

# In the row of a sealant, "old silicone" is a bead too.
_is_bead(item, line) if {
	item.family == ""
	line.role == "sealant"
}
