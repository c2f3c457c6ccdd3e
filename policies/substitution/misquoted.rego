# METADATA
# title: Specified product misquoted
# description: |
#   The submittal has a column for what was specified, and names another product there than the specified schedule
#   does for that row. A substitute then looks equal to something that nobody specified, and two years later the
#   record of the job is wrong. Only products that have data are held against each other. It does not apply to
#   other words for the same product, nor to rows whose match is in doubt.
# custom:
#   id: substitution-misquoted
#   topic: substitution
#   severity: warning
#   reason: A substitute is judged against what was specified, and here the submittal tells that wrongly.
#   remedy: Have the submittal corrected to the specified product, and look at the substitution again.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "the submittal gives FM-1 as specified where the schedule has FM-3"
package substitution.misquoted

import data.lib.facts
import data.lib.finding

findings contains found if {
	some pair in input.comparison.pairs
	pair.quoted != ""
	pair.sure
	line := facts.lines_by_id[pair.line]
	not line.struck
	message := sprintf("the submittal gives %s as specified; the schedule specifies %s", [pair.quoted, pair.was.text])
	found := finding.at_with(line, ["specified"], message, {"related": [{
		"at": {"sheet": pair.was.at.sheet, "row": pair.was.at.row},
		"cells": [],
		"what": sprintf("specified in %s: %s", [input.comparison.specified, pair.was.text]),
	}]})
}
