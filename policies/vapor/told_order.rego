# METADATA
# title: Row tells its vapor-tight sheet on the cold side
# description: |
#   A remark tells the layers in order, from the room to the weather or back, and the row's own vapor-tight sheet
#   comes after all of the insulation. By the second winter the face behind it is wet. The same mistake as in a
#   section by rows, told where no section is scheduled. An error where the winter is cold and the sheet is class
#   I, else a question. It does not apply where the winter is mild or not known.
# custom:
#   id: vapor-cold-side-told
#   topic: vapor
#   severity: error
#   reason: Room moisture reaches the sheet where it is below the dew point, and condenses on it all winter.
#   remedy: Put the sheet on the warm side, or enough insulation outside of it, or use a vapor-open sheet there.
#   source: dew point at the sheet by ISO 13788; IRC R702.7 on insulation outside of a tight layer
#   basis: source-read
#   example: "remark: room to street: slab, wool, board, sheet, soffit panel"
package vapor.told_order

import data.lib.facts
import data.lib.finding
import data.lib.section
import data.lib.vaporclass
import data.lib.winter

findings contains finding.at_with(line, ["material", slot], message, {"severity": _severity(sheet)}) if {
	winter.celsius <= data.vapor.climate.cool_c
	some line in facts.live_lines
	not line.id in section.judged_lines
	sheet := facts.main_items(line)[0]
	vaporclass.is_tight(sheet)
	some slot in data.vapor.order.slots
	layers := _layers(lower(line.texts[slot]))
	_is_last(layers, lower(sheet.text))
	message := sprintf(
		"%s lies outside of all the insulation, as the row tells it; with %s room moisture condenses on it",
		[sheet.text, _cold],
	)
}

_severity(sheet) := "error" if {
	winter.celsius <= data.vapor.climate.cold_c
	vaporclass.of(sheet) == "I"
} else := "warning"

_cold := sprintf("%s in the three coldest months", [winter.written(winter.celsius)])

# _layers lists the words of each layer, room side first.
_layers(text) := _list(text, data.vapor.order.outward) if {
	regex.match(data.vapor.order.outward, text)
} else := array.reverse(_list(text, data.vapor.order.inward)) if {
	regex.match(data.vapor.order.inward, text)
}

# The list ends with its sentence.
_list(text, head) := regex.split(data.vapor.order.split, first) if {
	tail := regex.split(head, text)[1]
	first := regex.split(`\.\s|\n`, tail)[0]
}

# _is_last: all insulation comes before the sheet.
_is_last(layers, own) if {
	sheet := [i | some i, words in layers; _is_sheet(words, own)][0]
	insulation := [i | some i, words in layers; regex.match(data.vapor.order.insulation, words)]
	count(insulation) > 0
	max(insulation) < sheet
}

_is_sheet(words, _) if regex.match(data.vapor.order.sheet, words)

_is_sheet(words, own) if contains(words, own)
