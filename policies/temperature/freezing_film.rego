# METADATA
# title: Film that may not freeze, in nights of frost
# description: |
#   The data of a fluid-applied film says for how many hours or nights after the work it may not freeze, and at the
#   place and dates of the row the odds of a frost in that time are even or worse. By day the air is warm enough, so
#   nobody stops; the film freezes before it has set, and is dust or cracks by spring. The nights are taken as one like
#   the other. So with data that asks for its least temperature for hours after the work too, where the mean of the
#   nights lies clearly lower, and with a water-borne film where the row tells of a night that is colder than its
#   least, though without frost, which temperature-night-frost tells. It does not apply to sheets, nor where the work
#   is heated, where milder nights are told, where the data tells no time, nor where the days are too cold as well,
#   which temperature-cold-sheet tells.
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

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds
import data.lib.thermometer
import data.lib.thick
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	window.night_frost > 0
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	not line.figures.reading_night_c
	not odds.sheet(window)
	kept := _kept(line)[0]
	share := 1 - _power(1 - window.night_frost, kept.nights)
	share >= _rules.odds
	related := [finding.related_product(kept.product, [kept.slot], "its data on frost")]
	found := finding.at_with(line, ["material", "tag", "install"], _message(window, kept, share), {"related": related})
}

# Data that asks for the least temperature of the work for hours after it, too.
findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	not line.figures.reading_night_c
	not odds.sheet(window)
	warm := _warm(line, window)[0]
	window.mean_min_c < warm.check.limit_c - _rules.below_c
	related := [finding.related_product(warm.product, [warm.slot], "its data on the hours after")]
	message := naming.say("%s must stay as warm as its data asks (%s) for %s after: %s%s the nights go down to %s", [
		naming.plain(warm.item),
		words.quoted(warm.check.limit_text),
		warm.says,
		forecast.when(window),
		forecast.where(window),
		degrees.write(round(window.mean_min_c), degrees.like(line, warm.check)),
	])
	found := finding.at_with(line, ["material", "tag", "install"], message, {"related": related})
}

# A night that the row itself tells, colder than the least of a film that dries by its water.
findings contains found if {
	some line in facts.live_lines
	not odds.is_heated(line)
	night := line.figures.reading_night_c
	some limit in thermometer.limits(line)
	item := limit.item
	item.id in {own.id | some own in facts.main_items(line)}
	thick.is_film(item)
	facts.has_key(item, ["water-borne"])
	night.min >= data.temperature.freezing.at_c
	night.max < limit.figure.min - data.temperature.reading.tolerance_k
	like := degrees.of_figure(limit.figure)
	message := naming.say("%s goes on from %s, and dries by its water; the row tells of a night of %s", [
		naming.plain(item),
		degrees.write(limit.figure.min, like),
		degrees.write(night.max, like),
	])
	related := [finding.related_product(facts.product_of(item), [limit.figure.at.cell], "its data")]
	found := finding.at_with(line, [item.at.cell, night.at.cell, "install"], message, {"related": related})
}

_warm(line, window) := [{"item": item, "product": product_of, "slot": slot, "check": check, "says": says} |
	some item in facts.main_items(line)
	thick.is_film(item)
	product_of := facts.product_of(item)
	some slot in _rules.texts
	text := lower(object.get(product_of.texts, slot, ""))
	count(_time_of(text)) == 0
	some hit in regex.find_all_string_submatch_n(_rules.warm, text, 1)
	says := sprintf("%s %s", [hit[1], hit[2]])
	_spans_night(to_number(hit[1]), hit[2])
	some check in window.checks
	check.item == item.id
	check.bound == "apply_min_c"
]

_spans_night(time, _) if time >= _rules.least_hours

_spans_night(_, unit) if not regex.match(_rules.hours, unit)

_time_of(text) := [time | time := _time(text)]

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
	forecast.where(window),
	words.percent(window.night_frost),
	_in_several(kept.nights, share),
])

_in_several(nights, share) := sprintf(", so that one of %d is so with odds of %s", [nights, words.percent(share)]) if {
	nights > 1
} else := ""

_rules := data.temperature.freezing.kept
