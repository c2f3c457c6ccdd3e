# METADATA
# title: Solvent-borne primer under an acrylic sheet
# description: |
#   Acrylic adhesive swells in solvent and stays soft; the sheet slides when the sun reaches it, and after two
#   summers its top edge has crept down from under its bar. Most makers of acrylic sheets allow a water-borne
#   primer or none. An error where data of sheet or primer says so, else a question. It does not apply to
#   asphaltic and butyl sheets, which solvent-borne primers are made for.
# custom:
#   id: pairing-solvent-primer-under-acrylic
#   topic: pairing
#   severity: warning
#   reason: Solvent left in the primer swells the acrylic adhesive.
#   remedy: Use the water-borne primer that the sheet's maker lists, or none where its data asks for none.
#   source: common practice
#   basis: common-practice
#   example: "vapor-permeable acrylic sheet on CMU, primer: solvent-borne PR-1"
package pairing.primer_solvent_acrylic

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.primer_fit
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	primers := primer.named(line)
	beds := [bed |
		some bed in sheet.beds_of(line)
		primer_fit.swells_acrylic(bed, primer.on(bed, primers))
		not facts.has_key(bed.under, ["polystyrene"])
	]
	count(beds) > 0
	extra := {"severity": _severity(beds[0], primers)}
	found := finding.at_with(line, ["primer", "material"], _message(beds[0], primers), extra)
}

_severity(bed, primers) := "error" if {
	primer_fit.bars(bed, primers)
} else := "error" if {
	primer.asked(bed).primer == "listed"
} else := "warning"

_message(bed, primers) := naming.say("solvent-borne primer %s is put under %s, whose acrylic adhesive it swells%s", [
	words.list([p.text | some p in primers]),
	naming.noun(bed.item, "acrylic"),
	_takes(bed),
])

_takes(bed) := sprintf("; its data takes %s on %s", [primer.choice(want), bed.under.text]) if {
	want := primer.asked(bed)
	count(want.primers) > 0
} else := ""
