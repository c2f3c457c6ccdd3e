# METADATA
# title: Sheet bare for longer than the notes allow
# description: |
#   The project's own notes set a limit for days open to the sun, often lower than the maker's, since another
#   trade follows or the climate is harsh. A sheet left longer may look sound, and chalks and cracks unseen behind
#   the cladding within two years. Cover it sooner, or ask the author of the note. It does not apply where the
#   sheet's own data is broken as well, as that finding tells of both.
# custom:
#   id: exposure-project-limit
#   topic: exposure
#   severity: error
#   reason: The project's own limit for days in the sun is passed.
#   remedy: Move the cover date up, place the sheet later, or ask the author of the notes for more days.
#   source: the project's notes
#   basis: source-read
#   example: "FM-1 bare 50 days where the notes say: all sheets covered within 30 days"
package exposure.project_limit

import data.lib.bare
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some row in bare.rows
	limit := bare.noted(row)
	level := bare.level(row, limit.max)
	not _is_told(row)
	message := naming.say("%s %s; the notes allow %s%s", [
		naming.plain(row.item),
		bare.stays(row),
		words.days(limit.max),
		bare.temporary(row.line),
	])
	found := finding.at_with(row.line, ["material", "tag", "install", "cover"], message, {
		"severity": level,
		"related": array.concat(bare.related(row.line), [finding.related_address(limit.at, limit.text)]),
	})
}

# The sheet's own limit is told already.
_is_told(row) if bare.level(row, bare.own(row).days)
