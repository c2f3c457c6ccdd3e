# METADATA
# title: Row added
# description: |
#   A row of the submittal has no counterpart in the specified schedule: an addition by the contractor, or a row
#   that was renamed beyond knowing. Nobody has specified or priced it, and after two years it is the row that no
#   drawing explains. Ask what it is for. It does not apply to rows that were split off, joined, renamed or moved,
#   as long as they are still known for what they were.
# custom:
#   id: substitution-added
#   topic: substitution
#   severity: note
#   reason: What was not specified was not designed; it may be right, and it may be a line that belongs elsewhere.
#   remedy: Ask what the row is for.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a row for a canopy that the specified schedule does not have"
package substitution.added

import data.lib.facts
import data.lib.finding

findings contains found if {
	some now in input.comparison.added
	line := facts.lines_by_id[now.line]
	not line.struck
	found := finding.at(line, ["mark", "material"], "this row is not in the specified schedule")
}
