# METADATA
# title: Specified row missing
# description: |
#   A row of the specified schedule has no counterpart in the submittal: it was forgotten, or dropped to save its
#   cost, and what it closed leaks in its first or second year. The finding stands at the heading of the submitted
#   table, since there is no row for it. It does not apply to rows that were split, joined, renamed or moved, as
#   long as they are still known for what they were.
# custom:
#   id: substitution-removed
#   topic: substitution
#   severity: warning
#   reason: What is left out of the submittal is not bought, or bought without review.
#   remedy: Ask where the row went, and have it submitted.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "the head flashing of the specified schedule is not in the submittal"
package substitution.removed

import data.lib.finding

findings contains found if {
	some was in input.comparison.removed
	message := sprintf("%s of the specified schedule has no row in the submittal", [_names(was)])
	found := finding.for_address(_heading, message, {"related": [{
		"at": {"sheet": was.at.sheet, "row": was.at.row},
		"cells": [],
		"what": sprintf("specified in %s", [input.comparison.specified]),
	}]})
}

_names(was) := concat(", ", [part | some part in [was.mark, was.place, was.text]; part != ""])

_heading := heads[0] if {
	heads := [{"sheet": table.sheet, "row": max(table.heading_rows)} |
		some table in input.reading.tables
		table.kind == "schedule"
		count(table.heading_rows) > 0
	]
	count(heads) > 0
} else := {"sheet": "", "row": 0}
