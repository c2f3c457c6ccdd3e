# METADATA
# title: Film that may not freeze, in nights of frost
# description: |
#   The data of a fluid-applied film says for how many hours or nights after the work it may not freeze, and at the
#   place and dates of the row the odds of a frost in that time are even or worse. By day the air is warm enough, so
#   nobody stops; the film freezes before it has set, and is dust or cracks by spring. The nights are taken as one like
#   the other. It does not apply to sheets, nor where the work is heated, where readings of the nights are told, where
#   the data tells no time, nor where the days are too cold as well, which temperature-cold-sheet tells.
# custom:
#   id: temperature-freezing-film
#   topic: temperature
#   severity: warning
#   reason: A film that freezes before it has set does not hold together, nor to the wall.
#   remedy: Heat and enclose until it has set, move the work to milder nights, or take a film that bears frost.
#   source: the product's data; the odds are those of the season
#   basis: common-practice
#   example: "Acrylic film, no frost for 48 h after; mid-October, 45% of nights below freezing"
package temperature.freezing_film

import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds
import data.lib.thick
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	window.night_frost > 0
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	not line.figures.reading_night_c
	not odds.sheet(line, window)
	kept := _kept(line)[0]
	share := 1 - _power(1 - window.night_frost, kept.nights)
	share >= _rules.odds
	related := [finding.related_product(kept.product, [kept.slot], "its data on frost")]
	found := finding.at_with(line, ["material", "tag", "install"], _message(window, kept, share), {"related": related})
}

# _kept lists the films of a row that their data keeps from frost for a time: {"item", "product", "slot", "says",
# "nights"}.
_kept(line) := [object.union({"item": item, "product": data_of, "slot": slot}, time) |
	some item in facts.main_items(line)
	thick.is_film(item)
	data_of := facts.product_of(item)
	some slot in _rules.texts
	time := _time(lower(object.get(data_of.texts, slot, "")))
]

_time(text) := {"says": sprintf("%s %s", [found[1], found[2]]), "nights": nights} if {
	hits := [hit |
		some like in [_rules.after, _rules.before]
		hit := regex.find_all_string_submatch_n(like, text, 1)[0]
	]
	found := hits[0]
	nights := _nights(to_number(found[1]), found[2])
}

# What goes on by day has as many nights as it has days, and one at least.
_nights(time, unit) := max([1, ceil(time / 24)]) if {
	regex.match(_rules.hours, unit)
} else := max([1, time])

# _power multiplies a share with itself.
_power(share, n) := product([share | some _ in numbers.range(1, n)])

_message(window, kept, share) := naming.say("%s must not freeze for %s: %s%s %s of nights are below freezing%s", [
	naming.plain(kept.item),
	kept.says,
	forecast.when(window),
	forecast.where,
	words.percent(window.night_frost),
	_in_several(kept.nights, share),
])

_in_several(nights, share) := sprintf(", so that one of %d is so with odds of %s", [nights, words.percent(share)]) if {
	nights > 1
} else := ""

_rules := data.temperature.freezing.kept
