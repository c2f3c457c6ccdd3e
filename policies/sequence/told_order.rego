# METADATA
# title: Work out of order, in words
# description: |
#   The row says that a window stands before its pan, a head strip is on before the jambs, or the brick is up before the
#   flashing. What comes late can only be tucked in, and its laps run against the water. It does not apply where the
#   row's dates tell it already, nor where it was taken out and done again, nor where the same cell is told as a lap
#   against the water.
# custom:
#   id: sequence-told-order
#   topic: sequence
#   severity: error
#   reason: What comes late cannot be lapped as the water runs.
#   remedy: Take out what stands in the way, flash from below (sill, jambs, head), and set it again.
#   source: "common practice: an opening is flashed before the unit is set, and from below"
#   basis: common-practice
#   example: "Remark: window went in before the sill pan"
package sequence.told_order

import data.lib.facts
import data.lib.mended
import data.lib.turn

findings contains found if {
	some line in facts.live_lines
	not _is_dated(line)
	found := mended.told(line, "out_of_order", "%s is built out of order (%s)")
	every cell in found.cells { not _is_told(line, cell) }
}

# A lap that runs against the water because of the order is one mistake.
_is_told(line, cell) if {
	some other in data.sequence.lap_reversed.findings
	other.line == line.id
	some said in line.signals
	said.id == "out_of_order"
	said.at.cell == cell
	cell in other.cells
}

_is_dated(line) if turn.before(line, "unit_set", "install")
