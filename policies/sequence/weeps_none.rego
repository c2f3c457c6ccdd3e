# METADATA
# title: Flashing without weeps
# description: |
#   What a flashing catches behind brick gets out at the weeps. Without them it stands on the flashing until it finds
#   the end, a lap or the inside, and two winters later the brick below is white and spalling. Told where the row says
#   that there are none; where the notes ask for them it is an error. It does not apply to rows that do not speak of
#   weeps, as most do not, nor to sheets and pans that lie in no masonry.
# custom:
#   id: sequence-weeps-none
#   topic: sequence
#   severity: warning
#   reason: Water on a flashing that has no weeps stands there and goes into the wall.
#   remedy: Put weeps right on top of the flashing, as close as the notes ask, and no farther apart than 33 in (838 mm).
#   source: building code for masonry veneer, weeps right above the flashing (second-hand)
#   basis: source-read
#   example: "Shelf angle flashing, end dams, no weeps"
package sequence.weeps_none

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	_is_sheet_or_metal(line)
	facts.denied(line, "weeps")
	_is_in_veneer(line)
	said := [s | some s in line.signals; s.id == "weeps"; s.no][0]
	item := facts.main_items(line)[0]
	message := naming.say("%s has no weeps (%s)%s", [naming.plain(item), words.quoted(said.text), _asks(line, item)])
	found := finding.at_with(line, [said.slot, said.at.cell], message, _extra(line, item))
}

_is_sheet_or_metal(line) if line.role in data.pairing.chemistry.roles

_is_sheet_or_metal(line) if line.role in data.sequence.order.metal_roles

_is_sheet_or_metal(line) if line.role in data.sequence.dams.film_roles

# The words of the row or of its product tell of a flashing in a masonry wall.
_is_in_veneer(line) if {
	some text in array.concat([line.group, line.place, line.mark], [text | some text in line.texts])
	regex.match(data.sequence.recess.wall, lower(text))
}

_is_in_veneer(line) if {
	some text in facts.product_of(facts.main_items(line)[0]).texts
	regex.match(data.sequence.recess.wall, lower(text))
}

_asks(line, item) := "; the notes ask for them" if {
	_asked(line, item)
} else := ""

_extra(line, item) := {"severity": "error", "related": [finding.related_address(limit.at, limit.text)]} if {
	limit := _asked(line, item)
} else := {}

_asked(line, item) := limits.limits_for("weep_spacing_mm", line, item.keys, line.role)[0]
