# METADATA
# title: Material that was kept in the cold
# description: |
#   The row says that pails of a water-borne material froze before they were used, or that rolls, tape or cartridges
#   lay out in a freezing night and went on cold. Latex and emulsion that froze have broken: they dry to crumbs,
#   stirred or not. A cold roll has no tack, and is stiff over every edge. Rolls are asked about only where the
#   season's nights freeze. It does not apply to stock that was sent back, nor to what came from a warm box.
# custom:
#   id: temperature-cold-stock
#   topic: temperature
#   severity: warning
#   reason: Emulsion that froze does not form a film, and a cold adhesive does not wet the wall.
#   remedy: Send back what froze; keep rolls and tubes at room temperature until the hour they are used.
#   source: "common practice: makers bar frozen emulsion and latex, and ask for rolls that are stored warm"
#   basis: common-practice
#   example: "Remark: drums froze in the yard, thawed and stirred"
package temperature.cold_stock

import data.lib.facts
import data.lib.finding
import data.lib.mended
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	told := mended.open(line, "stock_frozen")[0]
	item := _wet(line)[0]
	message := naming.say("%s froze before it was used (%s)%s", [
		naming.plain(item),
		words.quoted(told.text),
		_asks(item),
	])
	found := finding.at_with(line, [item.at.cell, told.slot, told.at.cell], message, {
		"severity": _severity(item),
		"related": _related(item),
	})
}

findings contains found if {
	some window in facts.live_windows
	window.night_frost >= data.temperature.freezing.nights
	line := facts.lines_by_id[window.line]
	told := mended.open(line, "stock_cold")[0]
	item := facts.main_items(line)[0]
	item.class in data.temperature.stock.classes
	message := naming.say("%s is kept in the cold before it goes on (%s)", [naming.plain(item), words.quoted(told.text)])
	found := finding.at(line, ["material", "tag", told.slot, told.at.cell], message)
}

# The row's own material first, then its primer: either may be what froze.
_wet(line) := [item |
	some item in array.concat(facts.main_items(line), facts.items_in(line, ["primer"]))
	_may_freeze(item)
]

_may_freeze(item) if facts.has_key(item, ["water-borne"])

_may_freeze(item) if _is_kept(item)

_is_kept(item) if facts.said(facts.product_of(item), "keep_from_freezing")

_severity(item) := "error" if {
	_is_kept(item)
} else := "warning"

_asks(item) := "; its data says to keep it from frost" if {
	_is_kept(item)
} else := ", and is water-borne"

_related(item) := [finding.related_product(product, [said.slot], "its data on frost") |
	product := facts.product_of(item)
	said := [s | some s in product.signals; s.id == "keep_from_freezing"][0]
]
