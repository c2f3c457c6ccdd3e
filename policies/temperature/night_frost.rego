# METADATA
# title: Water-borne film left to a night of frost
# description: |
#   The row itself tells that the night after the work freezes, by words or by a temperature below 32 F (0 C), and a
#   water-borne primer or coating is put on that day. By evening it is not through; it freezes on the wall and is
#   powder in the morning, and the sheet comes off with it. An error where the data says to keep the stuff from frost
#   until it is dry; else asked about. It does not apply to heated or tented work, to a primer that is covered the
#   same day, to solvent-borne stuff that nothing says to keep from frost, nor to the odds of a season, which
#   temperature-freezing-primer tells.
# custom:
#   id: temperature-night-frost
#   topic: temperature
#   severity: error
#   reason: Water-borne primer or coating that freezes before it is dry does not form a film.
#   remedy: Heat until it is dry and covered, wait for milder nights, or take a primer that bears frost.
#   source: the product's data and the row; else common practice for water-borne primers and emulsions
#   basis: common-practice
#   example: "Water-borne P-2 brushed on after lunch, sheet next day; 28 F overnight"
package temperature.night_frost

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	not _is_heated(line)
	told := _night(line)
	item := _wet(line)[0]
	message := naming.say("%s goes on before a night of frost (%s)%s", [naming.plain(item), told.says, _asks(item)])
	found := finding.at_with(line, [item.at.cell, told.cell, "install"], message, {
		"severity": _severity(item),
		"related": _related(item),
	})
}

# Heat that is taken off later was there for the night.
_is_heated(line) if {
	some signal in line.signals
	signal.id == "heated"
	not signal.no
}

# The figure says more than words.
_night(line) := {"says": degrees.write(figure.min, degrees.of_figure(figure)), "cell": figure.at.cell} if {
	figure := line.figures.reading_night_c
	figure.min < data.temperature.freezing.at_c
} else := {"says": words.quoted(said.text), "cell": said.at.cell} if {
	not line.figures.reading_night_c
	facts.said(line, "frosty_night")
	said := [s | some s in line.signals; s.id == "frosty_night"; not s.no][0]
}

_wet(line) := array.concat(_primers(line), [item | some item in facts.main_items(line); _may_freeze(item)])

_primers(line) := [item |
	not facts.said(line, "same_day")
	some item in facts.items_in(line, ["primer"])
	_may_freeze(item)
]

_may_freeze(item) if {
	facts.has_key(item, ["water-borne"])
	item.class in data.temperature.freezing.classes
}

_may_freeze(item) if _is_kept(item)

_is_kept(item) if {
	item.class in data.temperature.freezing.classes
	facts.said(facts.product_of(item), "keep_from_freezing")
}

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
