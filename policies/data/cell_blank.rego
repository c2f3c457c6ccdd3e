# METADATA
# title: Cell empty that the notes ask for
# description: |
#   The project's notes ask for every cell of the row. An empty cell is filled on site by whoever stands there,
#   and two years later nobody knows with what. Write what is meant, or none. It does not apply to an empty primer
#   cell of a sheet that needs one and to an empty installation date, which have rules of their own, nor to a
#   dash, which says none.
# custom:
#   id: data-cell-blank
#   topic: data
#   severity: warning
#   reason: The notes ask for the cell, and nobody can tell what an empty one means.
#   remedy: Fill it in, or put a dash or 'none' where it does not apply.
#   source: the project's notes
#   basis: source-read
#   example: "notes: fill in D to J; F12 is empty"
package data.cell_blank

import data.lib.blank
import data.lib.facts
import data.lib.finding
import data.lib.primer
import data.lib.words

findings contains finding.at_with(line, slots, message, {"related": [related]}) if {
	some line in facts.live_lines
	slots := [slot |
		some slot, _ in line.cells
		not slot in data.data.cells.not_asked
		blank.is_blank(line, slot)
		count(blank.demands(line, slot)) > 0
		not _is_told(line, slot)
	]
	count(slots) > 0
	message := sprintf("%s: the notes ask for it, and the cell is empty", [words.list([_name(slot) | some slot in slots])])
	demand := blank.demands(line, slots[0])[0]
	related := finding.related_address(demand.at, demand.text)
}

_is_told(line, "primer") if primer.lacks(line)

_name(slot) := replace(slot, "_", " ")
