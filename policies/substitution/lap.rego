# METADATA
# title: Shorter lap than specified
# description: |
#   The submitted row laps less than the specified one. A lap is what keeps the joint shut when the sheet shrinks or
#   water stands on it; the inch saved is where it opens first. It does not apply to laps that differ by rounding
#   between units, nor where either row gives no figure.
# custom:
#   id: substitution-lap
#   topic: substitution
#   severity: warning
#   reason: The lap is part of what was specified, and a shorter one has less to hold by.
#   remedy: Lap as specified, or show the maker's written word that the offered sheet needs no more.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "laps of 2 in. submitted where 4 in. is specified"
package substitution.lap

import data.lib.facts
import data.lib.finding
import data.lib.loss
import data.lib.swap

findings contains found if {
	some pair in input.comparison.pairs
	line := facts.lines_by_id[pair.line]
	not line.struck
	some f in pair.figures
	f.kind == "lap_mm"
	f.order == "lower"
	message := sprintf("laps %s where %s is specified", [loss.said(f.kind, f.now), loss.said(f.kind, f.was)])
	found := finding.at_with(line, ["lap"], message, {"related": [swap.row(pair)]})
}
