# METADATA
# title: Sheet too soft for the heat under dark metal
# description: |
#   Dark metal laid on a sheet takes the sun and has nowhere to give it. After two summers ordinary asphaltic
#   sheet has run out at the drip and left the nails bare. The figure that the notes state counts; without one,
#   185 F (85 C) under dark metal laid direct is asked about. Behind metal panels, which stand off, it is the notes
#   that may ask for a figure. It does not apply where insulation, battens or clips with air lie between, to light
#   metal, nor to a sheet whose data has the figure; without a figure, a high-temperature grade, butyl and silicone are
#   let pass, so look up theirs.
# custom:
#   id: temperature-service-dark
#   topic: temperature
#   severity: error
#   reason: Dark metal in the sun heats the sheet under it past what its compound bears, and it flows.
#   remedy: Take a high-temperature sheet whose data has the figure, or part the two by insulation or a vent space.
#   source: the project's notes and the product's data; else common practice for dark metal laid direct
#   basis: common-practice
#   example: "R-01 (serves to 70 C) tight under a matt black coping; the notes ask for 85 C there"
package temperature.service_dark

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.hot_cover
import data.lib.limits
import data.lib.measure
import data.lib.naming
import data.lib.sheet
import data.lib.stated
import data.lib.words

findings contains found if {
	some line in sheet.lines
	item := facts.main_items(line)[0]
	need := _need(line, item)
	have := _have(line, item)
	_falls_short(need, have)
	not line.id in _other_sheet
	slots := array.concat(["material", "tag", need.told.slot, "service_max"], _cell(have))
	found := finding.at_with(line, slots, _message(item, need, have), {
		"severity": _severity(need, have),
		"related": array.concat(_note(need), _data(have)),
	})
}

# Where the notes allow another sheet only, that rule tells it.
_other_sheet := {found.line | some found in data.performance.only_under.findings}

_falls_short(need, have) if have.c < need.c - data.temperature.service.tolerance_k

_falls_short(need, have) if {
	_runs_over(need)
	have.c < need.c + data.temperature.service.tolerance_k
}

# The notes say that the metal gets hotter than their figure.
_runs_over(need) if {
	need.from == "notes"
	regex.match(data.temperature.service.runs_over, lower(need.limit.text))
}

# The notes' own figure comes first; what it asks of the row must be said in the row.
_need(line, item) := {"c": measure.low(limit), "from": "notes", "limit": limit, "told": best.told} if {
	seen := _seen(line)
	all := [{"limit": l, "told": cover} |
		some l in limits.limits_for("service_c", seen, item.keys, line.role)
		cover := _cover(line, l)
		every signal in _when(l) { facts.said(seen, signal) }
	]
	top := max([measure.low(one.limit) | some one in all])
	best := [one | some one in all; measure.low(one.limit) == top][0]
	limit := best.limit
} else := {"c": data.temperature.service.usual_c, "from": "usual", "limit": {}, "told": hot_cover.dark(line)[0]} if {
	hot_cover.is_direct(line)
}

# The color may be told by the metal's own data and not by the row; and a coping lies on the sheet, said or not.
_seen(line) := object.union(line, {"signals": array.concat(line.signals, told)}) if {
	dark := ["dark_color" | hot_cover.dark(line)]
	direct := ["laid_direct" | hot_cover.is_direct(line)]
	told := [{"id": id, "no": false} | some id in array.concat(dark, direct)]
	count(told) > 0
} else := line

_when(limit) := [] if limit.when == null

_when(limit) := limit.when if limit.when != null

_cover(line, limit) := hot_cover.dark(line)[0] if "dark_color" in _when(limit)

_cover(line, limit) := _plain_cover(line, limit) if not "dark_color" in _when(limit)

_plain_cover(line, limit) := hot_cover.any(line)[0] if {
	hot_cover.any(line)
} else := hot_cover.panels(line)[0] if {
	regex.match(data.temperature.service.panel_note, lower(limit.text))
}

_have(line, _) := {"c": c, "found": found, "is_stated": true} if {
	found := stated.figure(line, "service_max_c")
	not found.figure.no_limit
	c := measure.high(found.figure)
} else := {"c": data.temperature.service.usual_max_c[key], "found": {}, "is_stated": false} if {
	not stated.figure(line, "service_max_c")
	not hot_cover.is_membrane(line)
	item := facts.main_items(line)[0]
	not facts.has_key(item, data.temperature.service.hot_keys)
	some key in item.keys
	data.temperature.service.usual_max_c[key]
}

_severity(need, have) := "error" if {
	need.from == "notes"
	have.is_stated
} else := "warning"

_message(item, need, have) := naming.say("%s lies under %s%s; %s", [
	naming.plain(item),
	words.quoted(need.told.text),
	_serves(need, have),
	_asks(need, have),
])

# Both figures are written in the same unit, that of the note.
_serves(need, have) := sprintf(" and serves to %s", [degrees.write(have.c, _like(need, have))]) if {
	have.is_stated
} else := " and no service temperature is given for it"

_asks(need, have) := sprintf("by the notes it gets hotter than %s there", [written]) if {
	_runs_over(need)
	written := degrees.write(need.c, _like(need, have))
} else := sprintf("the notes ask for %s", [degrees.write(need.c, _like(need, have))]) if {
	need.from == "notes"
} else := sprintf("%s laid direct usually asks for %s", [_dark(need), degrees.write(need.c, _like(need, have))])

_dark(need) := "a dark membrane" if {
	hot_cover.names_membrane(need.told.text)
} else := "dark metal"

_like(need, have) := need.limit.text if {
	need.from == "notes"
} else := degrees.of_figure(have.found.figure) if {
	have.is_stated
} else := "C"

_note(need) := [finding.related_address(need.limit.at, need.limit.text)] if {
	need.from == "notes"
} else := []

_data(have) := [finding.related_product(have.found.by, ["service_max"], "its service temperature")] if {
	have.found.from == "product"
} else := []

# The row may say it in its remark.
_cell(have) := [have.found.figure.at.cell] if {
	have.found.from == "row"
	have.found.figure.at.cell
} else := []
