# METADATA
# title: Opening flashed from the head down
# description: |
#   The order told for the flashings of an opening puts the head before the sill. Each piece then laps behind the one
#   below it, and the first rain runs into the wall at both corners of the sill. It applies to a cell, or a part of
#   one, that holds nothing but the parts of an opening in a row, each with its tag or without, and to the dates of
#   rows that give head, jambs and sill of the same openings the same product. In the cell of the product such a list
#   is an order where it says so ("then"). It does not apply to other layers, to a list without head or sill, nor to
#   rows of which one was begun before another ended.
# custom:
#   id: sequence-opening-order
#   topic: sequence
#   severity: error
#   reason: Water runs down; a piece that went on later stands over the one below it only when work goes upward.
#   remedy: Flash the sill first, then the jambs, then the head; take off what was lapped the wrong way.
#   source: "common practice: sill, jambs, head"
#   basis: common-practice
#   example: "Order: head, jambs, sill"
#   looks: across rows
package sequence.opening_order

import data.lib.facts
import data.lib.finding

findings contains finding.at(line, [slot], message) if {
	some line in facts.live_lines
	some slot in array.concat(_data.order_slots, _data.product_slots)
	_names_both(lower(line.texts[slot]))
	text := _said(line.texts[slot])[_]
	_is_order(slot, text)
	parts := _parts(_without_tags(line, text))
	_first(parts, "head") < _first(parts, "sill")
	message := sprintf("the opening is flashed in the order \"%s\", its head before its sill", [text])
}

# In rows of their own: the head of the openings is done before their sill is begun.
findings contains found if {
	some key in {one.key | some one in _rows; one.part == "head"}
	sills := _of(key, "sill")
	count(sills) > 0
	count(_of(key, "jamb")) > 0
	some head in _of(key, "head")
	every sill in sills { head.dates.install.to < sill.dates.install.from }
	message := sprintf("%s is done on %s, before the sill of the same openings (%s)", [
		head.texts[_data.part_slot],
		head.dates.install.text,
		concat(", ", [sill.dates.install.text | some sill in sills]),
	])
	found := finding.at_with(head, [_data.part_slot, "install"], message, {"related": [finding.related(
		sill,
		[_data.part_slot, "install"],
		"the sill",
	) |
		some sill in sills
	]})
}

_of(key, part) := [one.line | some one in _rows; one.key == key; one.part == part]

# _rows are the rows of one part of openings: which part, and what else tells of which openings and of what.
_rows := [{"line": line, "part": parts[0], "key": [line.sheet, line.group, rest, product]} |
	some line in _dated
	words := regex.split(`[^\p{L}\p{N}-]+`, lower(line.texts[_data.part_slot]))
	parts := [part | some word in words; part := _part_of[word]; count(word) > 1]
	count(parts) == 1
	rest := concat(" ", [word | some word in words; not _part_of[word]; word != ""])
	product := facts.main_items(line)[0].product
	product != ""
]

_dated := [line |
	some line in facts.live_lines
	line.texts[_data.part_slot]
	line.dates.install.from
	line.dates.install.to
]

_is_order(slot, _) if slot in _data.order_slots

_is_order(_, text) if regex.match(_data.order_words, lower(text))

# Most cells name no parts of an opening, and the same words stand in many rows.
_names_both(text) if {
	every part in ["head", "sill"] { regex.match(_names[part], text) }
}

_names := {part: sprintf(`\b(?:%s)\b`, [concat("|", words)]) | some part, words in _data.parts}

# What is put on there is not in question: "sill pan PF-2".
_without_tags(line, text) := strings.replace_n({tag: "" | some tag in _tags(line)}, text)

_tags(line) := {item.tag | some item in line.items; item.tag != ""}

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
