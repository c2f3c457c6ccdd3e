# METADATA
# title: No termination where the other rows have one
# description: |
#   The edge cell says none, or is empty although the notes ask for every edge to be closed, while at least half
#   of the sheets in the table have something in it. A loose top edge is peeled by wind and let down by its own
#   weight, and by the second year water runs in behind it. It does not apply where a bar, a bead or a lap is told
#   elsewhere in the row, nor to a table without a column for edges, nor to a liquid, which has no edge, nor to the
#   sheet under a coping, whose legs come down over it.
# custom:
#   id: sequence-edge-none
#   topic: sequence
#   severity: warning
#   reason: An edge that nobody closes lets water behind the sheet.
#   remedy: Name the bar, the bead or the lap that closes the edge.
#   source: the project's notes; else common practice
#   basis: common-practice
#   example: "Edge: none; the other rows have: bar + S-2 at top"
package sequence.edge_none

import data.lib.closing
import data.lib.edge_usual
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	item := facts.main_items(line)[0]
	says := _says(line)
	edge_usual.of(line.table)
	not closing.is_closed(line)
	not facts.said(line, "edge_open")
	not _needs_none(line, item)
	message := naming.say("the edge of %s has no termination (%s), and the other sheets of the table have one", [
		naming.plain(item),
		says.words,
	])
	found := finding.at_with(line, ["edge"], message, {"severity": says.severity, "related": _note(line)})
}

_says(line) := {"words": written, "severity": _by_rule(line)} if {
	_first_words(line) in data.sequence.edge.none_words
	written := sprintf("the cell says %s", [words.quoted(trim_space(line.texts.edge))])
} else := {"words": "the cell says nothing", "severity": "note"} if {
	closing.cell(line) in data.sequence.edge.doubtful_words
	closing.rule(line)
}

# A liquid has no edge to close, whatever the other rows have.
_needs_none(_, item) if facts.has_key(item, data.sequence.edge.edgeless)

# The legs of a coping close what lies under it; a note that asks for every edge is asked all the same.
_needs_none(line, _) if {
	not closing.rule(line)
	some text in [line.place, object.get(line.texts, "touches", ""), object.get(line.texts, "edge", "")]
	regex.match(data.sequence.edge.capping, lower(text))
}

# "None - cut edge" says none, and then how.
_first_words(line) := trim_space(regex.split(`\s[-–—]\s|[,;:(]`, closing.cell(line))[0])

_by_rule(line) := "error" if {
	closing.rule(line)
} else := "warning"

_note(line) := [finding.related_address(rule.at, rule.text)] if {
	rule := closing.rule(line)
} else := []

# So does a coping that lies beside the sheet on the top of a parapet: there is nothing but the coping above it.
_needs_none(line, _) if {
	not closing.rule(line)
	some text in [line.place, object.get(line.texts, "substrate", "")]
	regex.match(data.sequence.edge.wall_top, lower(text))
	regex.match(data.sequence.edge.coping, lower(object.get(line.texts, "touches", "")))
}
