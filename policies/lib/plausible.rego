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
	_is_out(figure, bounds)
}

_is_out(figure, bounds) if measure.high(figure) > bounds[1]

_is_out(figure, bounds) if measure.low(figure) < bounds[0]

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
