# METADATA
# title: Sheet bare for longer than its kind usually may
# description: |
#   Neither the row nor the product data says how long the sheet may stay open, and the plan is past the upper end
#   of what makers print for such a face. Past it the film chalks and splits, which shows as leaks in the second
#   or third year. No test standard stands behind those days, so it is a question to the maker. It does not apply
#   where row, product data or notes state a limit, which is held instead.
# custom:
#   id: exposure-over-usual
#   topic: exposure
#   severity: warning
#   reason: Past the usual days the face has lost much of its strength, and nothing in the workbook allows more.
#   remedy: Get the maker's limit in writing, or move the cover date up.
#   source: one exposure letter and common practice; no standard test stands behind printed days
#   basis: common-practice
#   example: "Polyethylene-faced SBS sheet without data, bare 120 days; such faces usually stop at 90"
package exposure.over_usual

import data.lib.bare
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some row in bare.rows
	usual := bare.usual(row)
	level := bare.level(row, usual.days)
	message := naming.say("%s %s, and no limit is given; %s usually may %s%s", [
		naming.plain(row.item),
		bare.stays(row),
		usual.name,
		words.days(usual.days),
		bare.temporary(row.line),
	])
	found := finding.at_with(row.line, ["material", "tag", "install", "cover"], message, {
		"severity": bare.softer(level),
		"related": bare.related(row.line),
		"source": sprintf("%s (%s)", [data.exposure.usual.source, usual.basis]),
	})
}
