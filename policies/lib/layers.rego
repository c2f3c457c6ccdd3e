# METADATA
# title: Dated layers of an assembly
# description: |
#   The rows of an assembly by the number of their layer, for those that have a date.
# custom:
#   looks: across rows
package lib.layers

import data.lib.facts

# sheets are the dated layers of sheets: {"key", "order", "line"}.
sheets := [layer | some layer in _all; layer.line.role in data.pairing.chemistry.roles]

# near lists the layers of some roles at most `reach` numbers away from a layer of the same assembly.
near(layer, roles, reach) := [other |
	some step in numbers.range(0 - reach, reach)
	some other in object.get(_by_spot, _spot(layer.key, layer.order + step), [])
	other.line.role in roles
	other.line.id != layer.line.id
]

# beside lists the layers of some roles in the whole assembly.
beside(layer, roles) := [other |
	some other in object.get(_by_key, layer.key, [])
	other.line.role in roles
]

_all := [{"key": key, "order": order, "line": line, "spot": _spot(key, order)} |
	some line in facts.live_lines
	line.order != ""
	line.dates.install.state in data.sequence.order.dated
	key := _key(line)
	found := regex.find_all_string_submatch_n(data.sequence.order.number, lower(line.order), 1)
	order := to_number(regex.replace(found[0][1], `^0+(\d)`, "$1"))
]

_key(line) := concat("|", [line.table, line.group]) if {
	line.group != ""
} else := concat("|", [line.table, line.mark]) if {
	line.mark != ""
}

_spot(key, order) := sprintf("%s|%d", [key, order])

_by_spot := {spot: layers |
	some spot in {layer.spot | some layer in _all}
	layers := [layer | some layer in _all; layer.spot == spot]
}

# Sheets only ask for beds and cladding, of which an assembly has few.
_by_key := {key: layers |
	some key in {layer.key | some layer in _few}
	layers := [layer | some layer in _few; layer.key == key]
}

_few := [layer | some layer in _all; not layer.line.role in data.pairing.chemistry.roles]
