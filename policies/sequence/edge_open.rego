# METADATA
# title: Edge left open
# description: |
#   The row says that an edge is loose, or that there is no bar and no bead. Insulation and brick hold nothing:
#   water that runs down the wall gets behind the edge, and wind peels it before the wall is closed; after two
#   years it has let go a hand deep. Where the lap is reversed as well, that finding tells of both. It does not
#   apply where the same cell tells of a bar, a bead or a lap from above, nor to an edge said to be loose until a
#   later step, which is work in hand, nor to a liquid without a bar or a bead, unless the notes ask for every edge.
# custom:
#   id: sequence-edge-open
#   topic: sequence
#   severity: warning
#   reason: Water gets behind an open edge, and wind peels it.
#   remedy: End the edge under a bar with a bead, under a bead of compatible sealant, or under the sheet above.
#   source: the project's notes; else common practice (edges and terminations closed the same day)
#   basis: common-practice
#   example: "Edge: none at top, held by the insulation"
package sequence.edge_open

import data.lib.closing
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	told := closing.open(line)[0]
	count(closing.reversed(line)) == 0
	item := facts.main_items(line)[0]
	not _needs_none(line, item, told.text)
	message := naming.say("an edge of %s stays open (%s)%s", [naming.plain(item), words.quoted(told.text), _asks(line)])
	found := finding.at_with(line, [told.slot, told.at.cell], message, _extra(line))
}

# A liquid runs out to nothing on what it sticks to: that it has no bar and no bead leaves no edge open.
_needs_none(line, item, text) if {
	facts.has_key(item, data.sequence.edge.edgeless)
	regex.match(data.sequence.edge.closed_by_none, lower(text))
	not closing.rule(line)
}

_asks(line) := "; the notes ask for every edge to be closed" if {
	closing.rule(line)
} else := ", with no bar, bead or lap over it"

_extra(line) := {"severity": "error", "related": [finding.related_address(rule.at, rule.text)]} if {
	rule := closing.rule(line)
} else := {}
