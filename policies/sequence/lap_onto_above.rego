# METADATA
# title: The lower piece laps over the one above it
# description: |
#   The row says which piece is above it, and that it laps over the face of that piece: water that runs down the
#   upper one is led behind the lower. It does not apply where the row laps under the piece above, or over the
#   one below.
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

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet

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
