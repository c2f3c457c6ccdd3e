# METADATA
# title: Opening flashed from the head down
# description: |
#   The order told for the flashings of an opening puts the head before the sill. Each piece then laps behind the one
#   below it, and the first rain runs into the wall at both corners of the sill. It applies to a cell, or a part of
#   one, that holds nothing but the parts of an opening in a row. It does not apply to other layers, nor to a list
#   without head or sill.
# custom:
#   id: sequence-opening-order
#   topic: sequence
#   severity: error
#   reason: Water runs down; a piece that went on later stands over the one below it only when work goes upward.
#   remedy: Flash the sill first, then the jambs, then the head; take off what was lapped the wrong way.
#   source: "common practice: sill, jambs, head"
#   basis: common-practice
#   example: "Order: head, jambs, sill"
package sequence.opening_order

import data.lib.facts
import data.lib.finding

findings contains finding.at(line, [slot], message) if {
	some line in facts.live_lines
	some slot in _data.order_slots
	text := _said(line.texts[slot])[_]
	parts := _parts(text)
	_first(parts, "head") < _first(parts, "sill")
	message := sprintf("the opening is flashed in the order \"%s\", its head before its sill", [text])
}

# _said is all that the cells of a slot say, and each part of it.
_said(text) := {trim_space(part) | some part in array.concat([text], split(text, ";"))}

# _parts are the parts of an opening that a text lists, and nothing else; undefined where it says more.
_parts(text) := [part | some word in words; part := _part_of[word]] if {
	words := [word | some word in regex.split(_data.parting, lower(trim(text, " ."))); word != ""]
	every word in words {
		_part_of[word]
	}
}

_first(parts, part) := [i | some i, p in parts; p == part][0]

_part_of := {word: part | some part, words in _data.parts; some word in words}

_data := data.sequence.openings
