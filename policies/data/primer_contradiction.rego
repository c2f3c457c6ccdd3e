# METADATA
# title: Primer column and remark contradict
# description: |
#   The primer cell names a primer, and the words of the same row say that there is none here. The crew follows
#   one of the two, and the bond of the next years hangs on which. Where the data of the sheet asks for a primer
#   on that substrate it is an error. It does not apply to a remark that no primer is needed on one of several
#   substrates, or that the row was primed earlier.
# custom:
#   id: data-primer-contradiction
#   topic: data
#   severity: warning
#   reason: The crew reads one of the two, and the sheet may go up dry.
#   remedy: Ask which holds, and strike the other.
#   source: the row itself
#   basis: source-read
#   example: "primer PR-2; remark: no primer at this location"
package data.primer_contradiction

import data.lib.facts
import data.lib.finding
import data.lib.primer
import data.lib.sheet

findings contains finding.at_with(line, ["primer", said.at.cell], message, {"severity": _severity(line)}) if {
	some line in facts.live_lines
	named := facts.items_in(line, ["primer"])
	count(named) > 0
	said := [s | some s in line.signals; s.id == "primer_none"; not s.no; s.slot != "primer"][0]
	not facts.said(line, "primed_earlier")
	not _has_bare_side(line)
	not _is_partial(line, said)
	message := sprintf("the primer cell says %s, and the %s says \"%s\"", [named[0].text, _where(said.slot), said.text])
}

# The row has a primer for each side, and one of them is none.
_has_bare_side(line) if {
	some text in split(line.texts.primer, ";")
	lower(trim_space(text)) in data.pairing.primer.none_words
}

# "No primer on clean metal" speaks of one of several substrates.
_is_partial(line, said) if {
	some item in line.items
	item.at.cell == said.at.cell
	not item.class in data.data.primer_words.own_classes
	contains(lower(object.get(item, "clause", "")), lower(said.text))
}

_severity(line) := "error" if {
	some bed in sheet.beds_of(line)
	primer.needed(primer.asked(bed))
} else := "warning"

_where(slot) := replace(slot, "_", " ")
