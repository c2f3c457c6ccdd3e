# METADATA
# title: Sheet on a part hotter than it bears
# description: |
#   A sleeve, flange or flue that runs hot cooks the sheet around it: the compound flows away from the very joint
#   it seals, and after two years there is a dry ring around the pipe. The row states how hot, the product's data
#   how much it bears; where the data is silent, the usual figure of ordinary asphaltic sheet is held against it
#   and asked about. It does not apply to a part that is insulated or stands clear, nor to a sheet whose data has
#   the figure.
# custom:
#   id: temperature-service-hot
#   topic: temperature
#   severity: error
#   reason: Above its service temperature the compound flows away from the joint that it seals.
#   remedy: Take a sheet or seal whose data has the figure, or insulate the hot part and hold the sheet clear of it.
#   source: the product's data; else the usual service temperature of ordinary asphaltic sheet, 160 to 180 F
#   basis: common-practice
#   example: "FM-1 (serves to 180 F) round a flue collar that runs at 220 F"
package temperature.service_hot

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.hot_item
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.stated
import data.lib.words

findings contains found if {
	some line in sheet.lines
	hot := hot_item.hottest(line)
	item := facts.main_items(line)[0]
	have := _have(line, item)
	hot.c > have.c + data.temperature.service.tolerance_k
	message := naming.say("%s serves to %s%s; the row says %s", [
		naming.plain(item),
		degrees.write(have.c, hot.text),
		have.usual,
		words.quoted(hot.text),
	])
	found := finding.at_with(line, ["material", "tag", hot.slot, "service_max"], message, {
		"severity": have.severity,
		"related": have.related,
	})
}

_have(line, _) := {"c": c, "usual": "", "severity": "error", "related": _data(told)} if {
	told := stated.figure(line, "service_max_c")
	not told.figure.no_limit
	c := measure.high(told.figure)
} else := {"c": c, "usual": " as a rule", "severity": "warning", "related": []} if {
	not stated.figure(line, "service_max_c")
	item := facts.main_items(line)[0]
	not facts.has_key(item, data.temperature.service.hot_keys)
	some key in item.keys
	c := data.temperature.service.usual_max_c[key]
}

_data(told) := [finding.related_product(told.by, ["service_max"], "its service temperature")] if {
	told.from == "product"
} else := []
