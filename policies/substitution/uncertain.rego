# METADATA
# title: Match uncertain
# description: |
#   The submitted row was matched to a specified one, but not beyond doubt: the two are little alike, or another
#   row fits almost as well. What is said of this row rests on that match, and a wrong one hides a loss that shows
#   two years later. Look at both rows. It does not apply where the two are well alike and no material differs,
#   since nothing rests on the match then.
# custom:
#   id: substitution-uncertain
#   topic: substitution
#   severity: note
#   reason: Rows that were renamed and reworded at once may be matched wrongly.
#   remedy: Look at both rows; give the submitted one the mark of the specified one if they are the same.
#   source: common practice of submittal review
#   basis: common-practice
#   example: "a row whose mark, place and material are all new"
package substitution.uncertain

import data.lib.facts
import data.lib.finding
import data.lib.words

findings contains found if {
	some pair in input.comparison.pairs
	not pair.sure
	_matters(pair)
	line := facts.lines_by_id[pair.line]
	not line.struck
	message := sprintf("taken for %s of the specified schedule (%s alike), which is not certain", [
		_names(pair.was),
		words.percent(pair.score),
	])
	found := finding.at_with(line, ["mark", "place"], message, {"related": [{
		"at": {"sheet": pair.was.at.sheet, "row": pair.was.at.row},
		"cells": [],
		"what": sprintf("specified in %s", [input.comparison.specified]),
	}]})
}

_matters(pair) if count(pair.swaps) > 0

_matters(pair) if pair.score < data.substitution.matching.sure

_names(was) := concat(", ", [part | some part in [was.mark, was.place]; part != ""])
