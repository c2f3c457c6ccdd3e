# METADATA
# title: Window set before its opening was flashed
# description: |
#   The date on which the window or door was set lies before that of the sheet or flashing of its opening, which can
#   then reach neither the sill under the frame nor the corners. It does not apply to strips that go over the flange
#   of a window, to heads, jambs, tie-ins and counter-flashings, which go on after it, nor to the same day. A day that
#   a remark tells counts where the row names what lies under the unit: a sill, a pan, the rough opening. Units that
#   have a row of their own count for the pans of the same wall and place, where all the pans there come after them.
# custom:
#   id: sequence-unit-first
#   topic: sequence
#   severity: error
#   reason: The sill pan and the wrap of an opening lie under the frame; behind one that stands, nothing can be laid.
#   remedy: Ask for the right dates; if they stand, take the unit out, flash the opening, and set it again.
#   source: "common practice: the rough opening is flashed before the unit is set"
#   basis: common-practice
#   example: "Opening flashed 24 Jun 2026, window set 22 Jun 2026"
#   looks: across rows
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

# The units of the place are a row of their own, and stand before any pan of it is laid.
findings contains finding.at_with(pan.line, ["install"], message, {"related": [related]}) if {
	some pan in _pans
	not pan.line.dates.unit_set
	unit := _set_first(pan.key)
	message := naming.say("%s goes in on %s, after %s of the same place were set on %s", [
		naming.row(pan.line),
		turn.told(pan.line, "install"),
		_called(unit),
		turn.told(unit, "install"),
	])
	related := finding.related(unit, ["type", "install"], "set here")
}

# _set_first is the first unit of a place that stands before all its pans are begun. Where floors follow one another,
# the units of one stand before the pans of the next, and nothing is told.
_set_first(key) := units[0] if {
	begun := min([pan.line.dates.install.from | some pan in _pans; pan.key == key])
	units := [unit.line | some unit in _units; unit.key == key; unit.line.dates.install.to < begun]
	count(units) > 0
}

_pans := [{"line": line, "key": _key(line)} |
	some line in _placed
	line.role in data.sequence.openings.sheet_roles
	regex.match(data.sequence.openings.pans, _called(line))
	not regex.match(data.sequence.openings.after_the_unit, _called(line))
]

_units := [{"line": line, "key": _key(line)} |
	some line in _placed
	not line.role in data.sequence.openings.sheet_roles
	regex.match(data.sequence.openings.units, _called(line))
]

_placed := [line |
	some line in facts.live_lines
	line.group != ""
	line.place != ""
	line.dates.install.state in {"day", "span"}
	line.dates.install.to != ""
]

_key(line) := concat("|", [line.table, line.group, lower(line.place)])

_called(line) := [text |
	some slot in data.sequence.openings.own_slots
	text := trim_space(object.get(line.texts, slot, ""))
	regex.match(`\pL{3}`, text)
][0]

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
