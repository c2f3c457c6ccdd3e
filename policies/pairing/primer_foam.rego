# METADATA
# title: Solvent-borne primer on polystyrene foam
# description: |
#   Toluene, hexane and naphtha dissolve XPS and EPS on contact: the primed foam edge is a gap with a film over
#   it, and two years later the sheet there is a bag of water. The sheet itself does no harm, so a water-borne
#   primer that its maker lists for foam is all that is needed. Told where foam is one of several substrates and
#   no water-borne primer is named for it. It does not apply to faces that are no polystyrene, nor where one of
#   the primers named is water-borne.
# custom:
#   id: pairing-solvent-primer-on-foam
#   topic: pairing
#   severity: error
#   reason: The primer's solvent dissolves polystyrene.
#   remedy: Use the water-borne primer that the sheet's maker lists for polystyrene foam.
#   source: foam associations' chemical resistance lists
#   basis: source-read
#   example: "SBS sheet on XPS, primer: solvent-borne PR-1"
package pairing.primer_foam

import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.primer_fit
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	primers := primer.named(line)
	beds := [bed | some bed in sheet.beds_of(line); primer_fit.eats_foam(bed, primer.on(bed, primers))]
	count(beds) > 0
	found := finding.at_with(line, ["primer", "substrate"], _message(beds[0], primers), {"facts": [
		primers[0].id,
		beds[0].under.id,
	]})
}

_message(bed, primers) := naming.say("solvent-borne primer %s goes on %s, and its solvent dissolves polystyrene%s", [
	words.list([p.text | some p in primers]),
	bed.under.text,
	_takes(bed),
])

_takes(bed) := sprintf("; the data of %s takes %s there", [bed.item.text, primer.choice(want)]) if {
	want := primer.asked(bed)
	count(want.primers) > 0
} else := ""
