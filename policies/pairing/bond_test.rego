# METADATA
# title: Face on which the bond must be tested
# description: |
#   Fire-retardant-treated wood, old paint, water-repellent block, fluoropolymer finishes: the bond is that of the
#   face, and it varies from lot to lot. Where it was poor, the sheet hangs by its termination bar after two
#   years. A good reviewer asks for a pull test on the job; it is asked once for each kind of face. It does not
#   apply to faces whose bond is known, whether they need a primer or not.
# custom:
#   id: pairing-bond-test
#   topic: pairing
#   severity: note
#   reason: The bond on that face varies and cannot be read from a schedule.
#   remedy: Ask for a pull test on the face itself, or the maker's letter.
#   source: from memory
#   basis: from-memory
#   example: "butyl sheet on painted block"
package pairing.bond_test

import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet

findings contains finding.at(first.line, ["material", "substrate"], _message(first, count(beds) - 1)) if {
	some beds in _by_face
	first := beds[0]
}

_by_face := {key: beds |
	some one in _asked
	key := one.key
	beds := [other.bed | some other in _asked; other.key == key]
}

_asked := [{"key": [bed.chemistry, bed.face], "bed": bed} |
	some bed in sheet.beds
	primer.usual(bed) == "test"
]

_message(bed, more) := naming.say("%s goes on %s: ask for a pull test there%s", [
	naming.noun(bed.item, bed.chemistry),
	bed.under.text,
	_more(more),
])

_more(more) := sprintf(" (and in %d more)", [more]) if {
	more > 0
} else := ""
