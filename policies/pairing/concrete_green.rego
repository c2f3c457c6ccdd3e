# METADATA
# title: Sheet on green concrete or mortar
# description: |
#   The cell says green or fresh concrete and gives no date. Its water and its lime get between the face and the
#   adhesive, and within two years a tight sheet hangs on it in blisters. Only sheets and fluids whose data names
#   green concrete go on it; "damp surface" is another permission. It does not apply where dates stand in the row,
#   since the age is judged then.
# custom:
#   id: pairing-green-concrete
#   topic: pairing
#   severity: warning
#   reason: Green concrete gives off water that breaks the bond of a sheet.
#   remedy: Give the placing date and wait for the age asked for, or use a product that names green concrete.
#   source: federal guide specification for sheet waterproofing; from memory
#   basis: common-practice
#   example: "SBS sheet on fresh concrete curb"
package pairing.concrete_green

import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains finding.at(line, ["material", "substrate"], _message(beds[0])) if {
	some line in sheet.lines
	not line.spans.concrete_age_days
	beds := [bed | some bed in sheet.beds_of(line); _is_green(bed)]
	count(beds) > 0
}

_is_green(bed) if {
	bed.chemistry != ""
	bed.under.family in data.pairing.faces.green.families
	regex.match(data.pairing.faces.green.words, lower(bed.under.text))
}

_message(bed) := naming.say("%s goes on %s, and no placing date shows how old it is", [
	naming.noun(bed.item, bed.chemistry),
	bed.under.text,
])
