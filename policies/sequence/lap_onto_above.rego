# METADATA
# title: The lower piece laps over the one above it
# description: |
#   The row says which piece is above it, in a column or in words, and that it laps over the face of that piece:
#   water that runs down the upper one is led behind the lower. So does a sheet of the foundation that is told to
#   lap over that of the wall, and that of a storey over that of the next one up. It does not apply where the row
#   laps under the piece above, or over the one below, nor to strips and patches that lie under the field.
# custom:
#   id: sequence-lap-onto-above
#   topic: sequence
#   severity: error
#   reason: Water running down the upper sheet is led behind the lower one.
#   remedy: Lap the upper sheet over the lower, or close the top of the lower with bar, bead and a strip over both.
#   source: residential code, lapping of water-resistive barriers and flashings (upper over lower)
#   basis: source-read
#   example: "flashing B-01, above it sheet B-02: laps 4 in. over the face of B-02"
#   looks: across rows
package sequence.lap_onto_above

import data.lib.closing
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	some slot in ["edge", "remark"]
	upper := _laps_over(line, slot)[0]
	message := naming.say("%s laps over %s, which the row says is above it (\"%s\")", [
		naming.plain(facts.main_items(line)[0]),
		upper,
		trim_space(line.texts[slot]),
	])
	related := [finding.related(other, ["mark", "material"], "the piece above") |
		some other in sheet.lines
		other.mark == upper
	]
	found := finding.at_with(line, ["material", "tag", "top", slot], message, {"related": related})
}

# In words alone: "turned up on the outside of FM-2 above", "upstand lapped onto the face of FM-2".
findings contains found if {
	some line in array.concat(sheet.lines, _legs)
	item := _lapped_outside(line)[0]
	message := naming.say("%s laps over the outside of %s above it (\"%s\")", [
		naming.plain(facts.main_items(line)[0]),
		item.text,
		trim_space(item.clause),
	])
	found := finding.at_with(line, ["material", "tag", item.slot, item.at.cell], message, {})
}

# In two cells: the neighbors are "DP-1 below, FM-2 above", and the laps "top dressed over the face of FM-2".
findings contains found if {
	some line in sheet.lines
	some slot in ["edge", "lap", "remark"]
	item := _dressed_over(line, slot)[0]
	message := naming.say("%s laps over the outside of %s above it (\"%s\")", [
		naming.plain(facts.main_items(line)[0]),
		item.text,
		trim_space(line.texts[slot]),
	])
	found := finding.at_with(line, ["material", "tag", item.at.cell, slot], message, {})
}

# By what the two are: the foundation sheet over the wall sheet.
findings contains found if {
	some line in sheet.lines
	pair := _from_the_ground(line)[0]
	message := naming.say("%s laps over %s, which comes down from above it (\"%s\")", [
		naming.plain(pair.lower),
		pair.upper.text,
		trim_space(pair.lower.clause),
	])
	found := finding.at_with(line, ["material", "tag", pair.lower.slot, pair.lower.at.cell], message, {})
}

# By the numbers of their storeys or lifts: "L1 top edge over the face of the L2 sheet", "L3 tucked behind L2".
findings contains found if {
	some line in sheet.lines
	some slot in data.sequence.order.lap_slots
	clause := _against_levels(lower(object.get(line.texts, slot, "")))[0]
	message := naming.say("%s: the piece of the lower level laps over that of the upper (%s)", [
		naming.plain(facts.main_items(line)[0]),
		words.quoted(clause),
	])
	found := finding.at_with(line, ["material", "tag", slot], message, {})
}

_against_levels(text) := [trim_space(clause) |
	some clause in regex.split(`[;\n]`, text)
	not regex.match(data.sequence.order.levels.unless, clause)
	_is_against_levels(clause)
]

_is_against_levels(clause) if {
	some said in regex.find_all_string_submatch_n(data.sequence.order.levels.over, clause, -1)
	to_number(said[1]) < to_number(said[2])
}

_is_against_levels(clause) if {
	some said in regex.find_all_string_submatch_n(data.sequence.order.levels.behind, clause, -1)
	to_number(said[1]) > to_number(said[2])
}

# A metal flashing with a leg that is turned up; that of a coping or counterflashing comes down.
_legs := [line |
	some line in facts.live_lines
	line.role in data.sequence.order.metal_roles
	not _hangs(line)
	some slot in data.sequence.order.lap_slots
	regex.match(data.sequence.order.leg_up, lower(line.texts[slot]))
]

_hangs(line) if {
	item := facts.main_items(line)[0]
	texts := array.concat([line.place, item.text, item.name], [text | some text in facts.product_of(item).texts])
	some text in texts
	regex.match(data.sequence.order.hangs, lower(text))
}

_from_the_ground(line) := [{"lower": below, "upper": upper} |
	some below in line.items
	_is_sheet_in_lap(below, "subject")
	below.relation in data.sequence.order.over_relations
	_is_low(below)
	some upper in line.items
	_is_sheet_in_lap(upper, "object")
	upper.at == below.at
	upper.clause == below.clause
	not _is_low(upper)
	not regex.match(data.sequence.order.lesser, lower(below.clause))
	not _is_lesser(line, upper)
	not closing.is_closed_in(line, below.slot)
	not facts.said(line, "lap_reversed")
]

# what is the row's own as a fillet or collar goes on before the sheet, and hangs from no wall
_is_lesser(line, item) if {
	own := facts.main_items(line)[0]
	own.product == item.product
	some slot in ["material", "tag"]
	regex.match(data.sequence.order.lesser, lower(object.get(line.texts, slot, "")))
}

_is_sheet_in_lap(item, side) if {
	item.side == side
	item.slot in data.sequence.order.lap_slots
	item.class in data.exposure.usual.classes
	item.polarity == "yes"
}

_is_low(item) if {
	text := lower(concat(" ", _names(item)))
	regex.match(data.sequence.order.low, text)
	not regex.match(data.sequence.order.not_low, text)
}

_names(item) := array.concat([item.text], [text |
	some slot in ["alias", "type", "material"]
	text := facts.product_of(item).texts[slot]
])

_dressed_over(line, slot) := [item |
	some item in line.items
	item.slot == "touches"
	item.product != ""
	"lies_above" in item.signals
	some clause in regex.split(`[,;]|\.\s`, lower(line.texts[slot]))
	parts := regex.split(data.sequence.order.over_face, clause)
	count(parts) == 2
	some word in regex.split(`[^\p{L}\d./-]+`, upper(parts[1]))
	trim(word, ".") == upper(item.product)
	not closing.is_closed_in(line, slot)
	not facts.said(line, "lap_reversed")
]

_lapped_outside(line) := [item |
	some item in line.items
	item.side == "object"
	item.slot in data.sequence.order.lap_slots
	item.class in data.exposure.usual.classes
	item.polarity == "yes"
	item.relation in data.sequence.order.lap_relations
	_is_above(item)
	not "lap_shingled" in item.signals
	regex.match(data.sequence.order.outer_face, lower(item.clause))
	not closing.is_closed_in(line, item.slot)
	not facts.said(line, "lap_reversed")
	every other in line.items { not _is_subject(line, other, item) }
]

_is_above(item) if "lies_above" in item.signals

_is_above(item) if {
	regex.match(data.sequence.order.leg, lower(item.clause))
	not regex.match(data.sequence.order.comes_down, lower(item.clause))
}

# Another piece than the row's own lies there: "bar on the outside of the sheet above".
_is_subject(line, other, item) if {
	other.at == item.at
	other.clause == item.clause
	other.side == "subject"
	not _is_own_flashing(line, other)
}

# "Flashing leg then over the face of FM-2" in the row of that flashing.
_is_own_flashing(line, other) if {
	line.role in data.sequence.order.metal_roles
	other.product == ""
	other.family in data.sequence.order.own_flashing
}

# The marks in the cell of what is above that the words say are lapped over.
_laps_over(line, slot) := [mark |
	some mark in _marks_in(line.texts.top)
	parts := regex.split(data.sequence.order.laps_over, lower(line.texts[slot]))
	count(parts) == 2
	mark in _marks_in(parts[1])
	not mark in _marks_in(object.get(line.texts, "bottom", ""))
]

_marks_in(text) := {mark |
	some word in regex.split(`[^\p{L}\d./-]+`, upper(text))
	mark := _known[trim(word, ".")]
}

_known := {upper(line.mark): line.mark | some line in sheet.lines; line.mark != ""}
