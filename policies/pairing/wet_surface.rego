# METADATA
# title: Sheet on a wet face
# description: |
#   A self-adhered sheet sticks to water as long as there is water. The row itself says that the face is wet, or
#   that work goes on in the rain; sheathing closed in wet stays wet for a season, and after two years its face
#   paper or its fibers come off with the sheet. It does not apply where the row says dry or denies wet, nor to
#   rows without a self-adhered sheet.
# custom:
#   id: pairing-wet-face
#   topic: pairing
#   severity: error
#   reason: Water on the face keeps primer and adhesive from it and is shut in behind the sheet.
#   remedy: Let the face dry, cover it, and write the moisture reading that the maker accepts into the row.
#   source: federal guide specification for sheet waterproofing on weather and surface conditions
#   basis: source-read
#   example: "SBS sheet on sheathing; remark: boards wet from snow most mornings, work carries on"
package pairing.wet_surface

import data.lib.face
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet

findings contains finding.at(line, ["material", said.slot], _message(line, stuck.item, said)) if {
	some stuck in sheet.stuck
	line := stuck.line
	not facts.said(line, "surface_dry")
	not face.two_minds(line)
	said := _wet(line)[0]
}

# A sheet or coating of another kind, whose own data asks for a dry face.
findings contains finding.at_with(line, ["material", "tag", said.slot], message, {"related": [related]}) if {
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	not line.id in _stuck_rows
	product := facts.product_of(item)
	slot := [slot | some slot, text in product.texts; _asks_dry(slot, lower(text))][0]
	not facts.said(line, "surface_dry")
	not face.two_minds(line)
	said := _wet(line)[0]
	message := naming.say("%s goes on a wet face (%s); its data says \"%s\"", [
		naming.plain(item),
		face.quote(line, said),
		product.texts[slot],
	])
	related := finding.related_product(product, [slot], "its data")
}

# Water of a wash whose day is told is judged by the days since.
_wet(line) := [said | some said in face.told(line, "surface_wet"); not _is_of_wash(line, said)]

_is_of_wash(line, said) if {
	line.spans.drying_days
	regex.match(data.pairing.washed.wash_words, lower(said.text))
}

_asks_dry("keep_off", text) if regex.match(data.pairing.surface.kept_off, text)

_asks_dry(_, text) if {
	regex.match(data.pairing.surface.dry_only, text)
	not regex.match(data.pairing.surface.damp_fine, text)
}

_stuck_rows := {stuck.line.id | some stuck in sheet.stuck}

_message(line, item, said) := naming.say("%s goes on a wet face (%s)", [naming.plain(item), face.quote(line, said)])
