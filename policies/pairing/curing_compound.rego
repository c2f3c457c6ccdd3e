# METADATA
# title: Curing compound under a sheet
# description: |
#   Wax, oil and pigmented compounds are there to keep water in, and keep adhesive out as well. Nothing holds on
#   them: the sheet sags off in its first summer, or hangs loose behind the insulation for years. Dissipating
#   resin wears off with sun and weeks, less so in winter and in shade. The compound often stands on another sheet
#   than the membrane: in the pour log. It does not apply to faces that are ground or washed free of it, nor to
#   water curing.
# custom:
#   id: pairing-curing-compound
#   topic: pairing
#   severity: error
#   reason: Wax or resin left by the curing compound keeps primer and adhesive from the concrete.
#   remedy: Grind or wash it off before priming, or cure with water or sheet; show it in the row.
#   source: federal guide specification for sheet waterproofing on curing agents
#   basis: source-read
#   example: "substrate: concrete curb, wax-base cure left on; material: FM-1"
package pairing.curing_compound

import data.lib.face
import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains found if {
	some line in sheet.lines
	item := sheet.own(line)
	told := face.told(line, "curing_compound")[0]
	found := finding.at_with(line, ["material", "substrate"], _message(line, item, told), {
		"severity": _severity(told),
		"related": [finding.related_address(told.at, told.text) | not told.here],
	})
}

_severity(told) := "error" if {
	told.stays
} else := "note" if {
	regex.match(data.pairing.curing.goes, lower(told.text))
} else := "error" if {
	regex.match(data.pairing.curing.stays, lower(told.text))
} else := "error" if {
	some limit in input.project.limits
	limit.kind == "no_curing_compound"
} else := "warning"

_message(line, item, told) := naming.say("%s goes on concrete with a curing compound (%s), not said to come off", [
	naming.plain(item),
	face.quote(line, told),
]) if {
	not told.stays
}

_message(line, item, told) := naming.say("%s goes on concrete whose curing compound stays on (%s)", [
	naming.plain(item),
	face.quote(line, told),
]) if {
	told.stays
}
