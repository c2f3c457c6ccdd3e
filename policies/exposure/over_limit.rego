# METADATA
# title: Sheet bare for longer than its data allows
# description: |
#   Sunlight breaks the face film first, then the compound under it; wind works at the laps meanwhile. The damage
#   hides under the cladding until the first driving rain of the second or third year. The days run from placing
#   the sheet to covering it. A range of days where only the long end is over the limit is asked about, and a
#   temporary cover told in the row makes it a note. It does not apply on the last day allowed, nor within the days
#   of a maker's letter that the notes tell of, in the rows of its place or that cite it.
# custom:
#   id: exposure-over-limit
#   topic: exposure
#   severity: error
#   reason: Sunlight breaks the face of the sheet, and the maker's data no longer holds.
#   remedy: Move the cover date up, place the sheet later, or take a sheet whose data allows the days.
#   source: the product's data or the row
#   basis: source-read
#   example: "R-02 bare 77 days, 13 Apr to 29 Jun; its data allows 60"
package exposure.over_limit

import data.lib.bare
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some row in bare.rows
	own := bare.own(row)
	told := own.told
	days := own.days
	level := bare.level(row, days)
	message := naming.say("%s %s; %s allows %s%s", [
		naming.plain(row.item),
		bare.stays(row),
		own.by,
		words.days(days),
		bare.temporary(row.line),
	])
	found := finding.at_with(row.line, ["material", "tag", "install", "cover", "exposure_days"], message, {
		"severity": level,
		"related": array.concat(bare.related(row.line), _data(told)),
		"keys": {"days": row.span.last, "allowed": days},
	})
}

_data(told) := [finding.related_product(told.by, ["exposure_days"], "its days open to the sun")] if {
	told.from == "product"
} else := []
