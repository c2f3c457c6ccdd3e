# METADATA
# title: Plausible figures
# description: |
#   Which figures no material of that role has, and the slip of the unit that would explain them.
package lib.plausible

import data.lib.measure

# range is [least, most] for a kind of figure and a role; undefined where none is told.
range(kind, role) := ranges[role] if {
	ranges := data.data.plausible.kinds[kind]
	ranges[role]
} else := data.data.plausible.kinds[kind].any

# slip is the range that the figure falls out of: {"least", "most"}; undefined where it is plausible.
slip(kind, role, figure) := {"least": bounds[0], "most": bounds[1]} if {
	bounds := range(kind, role)
	some value in _values(kind, figure)
	_is_out(value, bounds)
}

_is_out(value, bounds) if value > bounds[1]

_is_out(value, bounds) if value < bounds[0]

# A cell "40 to 120 °F" of a least temperature states its most as well: each bound is judged by its own kind.
_values(kind, figure) := {measure.low(figure)} if {
	kind in data.data.plausible.least_only
} else := {measure.high(figure)} if {
	kind in data.data.plausible.most_only
} else := {measure.low(figure), measure.high(figure)}

# cause is the slip of the unit that would make the figure usual: {"factor", "says"}; undefined where none does.
cause(kind, role, figure) := fits[0] if {
	kind in data.data.plausible.slip_kinds
	usual := data.data.plausible.slip_fits[role]
	fits := [one |
		some one in data.data.plausible.slips
		one.unit == measure.unit_of("length", figure).unit
		mm := measure.low(figure) * one.factor
		mm >= usual[0]
		mm <= usual[1]
	]
	count(fits) > 0
}
