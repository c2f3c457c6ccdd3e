# METADATA
# title: Vapor retarder of a roof above its insulation
# description: |
#   A roof told layer by layer has its vapor retarder above all of the insulation, and none below. Room moisture
#   rises into the insulation and condenses under the cold sheet; by the second winter the boards are wet and drip
#   into the room. Told of the row that calls itself the vapor retarder, with roofing above it. It does not apply
#   to roofing, to roofs with a tight layer below the insulation, nor where the winter is mild or not known.
# custom:
#   id: vapor-roof-retarder-above
#   topic: vapor
#   severity: error
#   reason: The sheet keeps room moisture out of nothing; it traps it in the insulation, and condenses it.
#   remedy: Lay the vapor retarder on the deck or the board over it, under all of the insulation.
#   source: common practice (the vapor retarder of a roof lies on its warm side); dew point at the sheet by ISO 13788
#   basis: common-practice
#   example: "Roof: deck, polyiso, vapor retarder, cover board, single-ply"
package vapor.roof_retarder

import data.lib.facts
import data.lib.finding
import data.lib.section
import data.lib.winter

findings contains found if {
	some roof in section.all
	is_number(roof.winter)
	roof.winter <= data.vapor.climate.cool_c
	some i, sheet in roof.layers
	sheet.barrier
	line := facts.lines_by_id[sheet.line]
	_calls_itself_retarder(line)
	_is_topmost(roof.layers, i)
	message := sprintf("%s, the vapor retarder, lies above all the insulation of the roof; with %s in %s %s", [
		sheet.text,
		winter.written(roof.winter),
		"the three coldest months",
		"room moisture condenses under it",
	])
	found := finding.at_with(line, ["material", "tag", "substrate"], message, {
		"severity": _severity(roof, sheet),
		"related": [finding.related(facts.lines_by_id[layer.line], ["material", "tag"], "the insulation") |
			some layer in roof.layers
			layer.insulates
			layer.line != line.id
		],
	})
}

_severity(roof, sheet) := "error" if {
	roof.winter <= data.vapor.climate.cold_c
	sheet.vapor == "I"
} else := "warning"

_calls_itself_retarder(line) if {
	some slot in data.vapor.roof.slots
	regex.match(data.vapor.roof.retarder, lower(line.texts[slot]))
}

# All insulation is below it, no barrier is, and roofing is above.
_is_topmost(layers, at) if {
	insulation := [i | some i, layer in layers; layer.insulates]
	count(insulation) > 0
	max(insulation) < at
	every layer in array.slice(layers, 0, at) { not layer.barrier }
	some layer in array.slice(layers, at + 1, count(layers))
	layer.class == "roofing"
}
