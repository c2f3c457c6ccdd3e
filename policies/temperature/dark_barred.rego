# METADATA
# title: Dark metal over a sheet whose data bars it
# description: |
#   The data of the sheet says no dark metal over it, and the row tells of a dark cover. Under it the compound runs, and
#   after two summers it has left the edge. It does not apply where the cover is said to lie clear, vented or
#   insulated, nor where the temperature in service tells the same.
# custom:
#   id: temperature-dark-barred
#   topic: temperature
#   severity: error
#   reason: Dark metal in the sun heats the sheet under it past what its compound bears, and it flows.
#   remedy: Take a high-temperature sheet whose data allows dark metal over it, or a light cover.
#   source: the product's data in this workbook
#   basis: source-read
#   example: "data of FM-2: not under dark copings; row: FM-2, black cap over"
package temperature.dark_barred

import data.lib.facts
import data.lib.finding
import data.lib.hot_cover
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	bar := _bars(product)[0]
	cover := _covers(line)[0]
	not line.id in _told
	message := naming.say("%s lies under %s; its data says %s", [
		naming.plain(item),
		words.quoted(cover.text),
		words.quoted(bar.text),
	])
	found := finding.at_with(line, ["material", "tag", cover.slot], message, {
		"related": [finding.related_product(product, [bar.slot], "its data")],
	})
}

_bars(product) := [{"text": found[0], "slot": slot} |
	some slot, text in product.texts
	found := regex.find_n(data.temperature.service.barred, text, 1)
	count(found) > 0
]

_covers(line) := hot_cover.dark(line) if {
	hot_cover.dark(line)
} else := [{"text": trim_space(found[0]), "slot": slot} |
	not hot_cover.is_parted(line)
	some slot in data.temperature.service.over
	found := regex.find_n(data.temperature.service.dark_cover, object.get(line.texts, slot, ""), 1)
	count(found) > 0
]

_told := {found.line | some found in data.temperature.service_dark.findings}
