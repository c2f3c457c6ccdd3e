# METADATA
# title: Drip or metal flashing laid dry
# description: |
#   A metal drip or pan lies in a bed of sealant, or water that runs back under its edge goes into the wall. The row
#   says that its metal is set dry, or that nothing is under it. It does not apply to copings and covers that hang on
#   cleats, to a dry fit before it is bedded, nor to a face that is dry.
# custom:
#   id: sequence-metal-dry
#   topic: sequence
#   severity: warning
#   reason: Water curls back under a dry metal edge and runs behind the flashing.
#   remedy: Set the metal in a continuous bed of a sealant that suits it and what lies under it.
#   source: the project's notes; else common practice for metal drips under through-wall flashing
#   basis: common-practice
#   example: "drip edge laid dry on the angle; notes: set drips in a bed of sealant"
package sequence.metal_dry

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	asked := limits.limits_for("metal_bedded", line, item.keys, line.role)
	_is_bedded_usually(line, item, asked)
	some slot in data.sequence.dry.slots
	clause := _dry(line.texts[slot])[0]
	message := naming.say("%s is laid dry, with no bed under it (\"%s\")", [naming.plain(item), trim_space(clause)])
	found := finding.at_with(line, ["material", slot], message, {
		"severity": _severity(asked),
		"related": [finding.related_address(limit.at, limit.text) | some limit in asked],
	})
}

_severity(asked) := "error" if {
	count(asked) > 0
} else := "warning"

# A drip, by the words of the row; with a note, any metal that is no cover.
_is_bedded_usually(line, item, _) if {
	item.class in data.sequence.dry.classes
	regex.match(data.sequence.dry.drips, _names(line, item))
}

_is_bedded_usually(line, item, asked) if {
	count(asked) > 0
	item.class in data.sequence.dry.classes
	not regex.match(data.sequence.dry.hung, _names(line, item))
}

_names(line, item) := lower(concat(" ", [
	line.place,
	line.texts.material,
	object.get(line.texts, "type", ""),
	item.name,
]))

_dry(text) := [clause |
	some clause in regex.split(`[;\n]|\.(\s|$)`, text)
	regex.match(data.sequence.dry.words, lower(clause))
	not regex.match(data.sequence.dry.unless, lower(clause))
]
