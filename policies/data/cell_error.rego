# METADATA
# title: Cell that shows an error
# description: |
#   The formula of the cell has failed, so what the author meant is not in the workbook, and the row was not judged
#   by it: a sheet on #REF! may lie on anything. In columns that nothing is judged by alone it is a warning. It does
#   not apply to a formula whose result was never stored, with which the workbook is not read at all.
# custom:
#   id: data-cell-error
#   topic: data
#   severity: error
#   reason: What the author meant is lost, and nothing that depends on it was checked.
#   remedy: Mend the formula, or write the words or the figure.
#   source: common practice
#   basis: common-practice
#   example: "substrate: #REF!"
package data.cell_error

import data.lib.facts
import data.lib.finding
import data.lib.words

findings contains finding.at_with(line, slots, _message(line, slots), {"severity": _severity(slots)}) if {
	some line in facts.live_lines
	slots := _failed(line)
	count(slots) > 0
}

findings contains finding.for_product(product, slots, _message(product, slots), {"severity": _severity(slots)}) if {
	some product in input.products
	slots := _failed(product)
	count(slots) > 0
}

_failed(row) := [slot | some slot, text in row.texts; _is_error(text)]

_is_error(text) if text in data.data.errors.values

_severity(slots) := "error" if {
	some slot in slots
	not slot in data.data.errors.mild
} else := "warning"

_message(row, slots) := sprintf("%s stands where %s should, so the row was not judged by it", [
	row.texts[slots[0]],
	words.list([_name(slot) | some slot in slots]),
])

_name(slot) := sprintf("the %s", [replace(slot, "_", " ")])
