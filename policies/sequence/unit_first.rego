# METADATA
# title: Window set before its opening was flashed
# description: |
#   The date on which the window or door was set lies before that of the sheet or flashing of its opening, which can
#   then reach neither the sill under the frame nor the corners. It does not apply to strips that go over the flange
#   of a window, to heads, jambs, tie-ins and counter-flashings, which go on after it, nor to the same day. A day that
#   a remark tells counts where the row names what lies under the unit: a sill, a pan, the rough opening.
# custom:
#   id: sequence-unit-first
#   topic: sequence
#   severity: error
#   reason: The sill pan and the wrap of an opening lie under the frame; behind one that stands, nothing can be laid.
#   remedy: Ask for the right dates; if they stand, take the unit out, flash the opening, and set it again.
#   source: "common practice: the rough opening is flashed before the unit is set"
#   basis: common-practice
#   example: "Opening flashed 24 Jun 2026, window set 22 Jun 2026"
package sequence.unit_first

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.turn

findings contains finding.at(line, ["install", "unit_set", line.dates.unit_set.at.cell], message) if {
	some line in facts.live_lines
	turn.before(line, "unit_set", "install")
	not _goes_after(line)
	_is_of_opening(line)
	message := naming.say("the unit is set on %s, before its opening is flashed on %s", [
		turn.told(line, "unit_set"),
		turn.told(line, "install"),
	])
}

_is_of_opening(line) if line.cells.unit_set

_is_of_opening(line) if {
	line.role in data.sequence.openings.sheet_roles
	_names_under(line)
}

_names_under(line) if {
	some slot in ["material", "type", "place", "mark", "substrate"]
	regex.match(data.sequence.openings.under_the_unit, object.get(line.texts, slot, ""))
}

# "Sill and jambs" go under the unit as the sill does.
_goes_after(line) if {
	some slot in ["material", "type", "place", "mark"]
	regex.match(data.sequence.openings.after_the_unit, line.texts[slot])
	not regex.match(data.sequence.openings.under_the_unit, line.texts[slot])
}
