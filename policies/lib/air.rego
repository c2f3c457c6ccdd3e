# METADATA
# title: Air permeance of sheets
# description: |
#   Which rows and products are air barrier sheets, and the limit that holds for them: the strictest of the project's,
#   else the usual one for a material.
package lib.air

import data.lib.facts
import data.lib.limits
import data.lib.measure

# is_sheet: the product or item is a sheet or flashing that air must not pass.
is_sheet(thing, role) if {
	role in data.performance.sheets.air_roles
	not thing.family in data.performance.sheets.not_air_families
	not facts.has_key(thing, data.performance.sheets.not_air_keys)
}

# limit is {"lsm2", "says", "severity", "related"} for a material with these keys in the line.
limit(line, keys, role) := {
	"lsm2": found.max,
	"says": sprintf("the project allows %s", [_written(found)]),
	"severity": "error",
	"at": found.at,
	"text": found.text,
} if {
	found := limits.lowest_max(limits.limits_for("air_lsm2", line, keys, role))
} else := object.union(
	{"lsm2": data.performance.air.usual.max_lsm2, "says": data.performance.air.usual.says},
	{"severity": _usual_severity(line)},
)

# excess is the limit that the value breaks; undefined where it keeps it.
excess(line, keys, role, value) := found if {
	not facts.said(line, "not_air_barrier")
	found := limit(line, keys, role)
	value > found.lsm2 * (1 + data.performance.air.tolerance)
}

# is_over_some: the value is over one of the limits, wherever it holds. Most sheets keep all of them.
is_over_some(value) if value > data.performance.air.usual.max_lsm2

is_over_some(value) if {
	some limit in limits.by_kind.air_lsm2
	is_number(limit.max)
	value > limit.max
}

# mistaken says for which other limit the value was taken: "; 0.02 is ...", or "".
mistaken(value, found) := sprintf("; %s", [slips[0].says]) if {
	_near(found.lsm2, data.performance.air.mistaken_for)
	slips := [slip | some slip in data.performance.air.mistaken; _near(value, slip)]
	count(slips) > 0
} else := ""

# The usual limit is known by its two round figures.
_written(found) := data.performance.air.usual.both if {
	_near(found.max, data.performance.air.mistaken_for)
} else := measure.written(found.max, "air", found)

_near(value, one) if abs(value - one.lsm2) <= one.lsm2 * one.within

_usual_severity(line) := "error" if facts.said(line, "air_barrier_here")

_usual_severity(line) := "warning" if not facts.said(line, "air_barrier_here")
