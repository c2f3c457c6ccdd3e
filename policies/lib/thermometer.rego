# METADATA
# title: What the thermometer said
# description: |
#   The temperature that was read when the work was done: of the surface, else of the air. It counts before any odds of
#   the season. A range ("71/43") may be a forecast or a normal: which of it held is not known,
#   but no more than its top.
package lib.thermometer

import data.lib.facts
import data.lib.measure

# reading is {"c", "figure", "what"}; undefined where none was read.
reading(line) := {"c": figure.min, "figure": figure, "what": "surface"} if {
	figure := line.figures.reading_surface_c
	_is_one(figure)
} else := {"c": figure.min, "figure": figure, "what": "air"} if {
	figure := line.figures.reading_air_c
	_is_one(figure)
}

# highest is the reading, or the top of a range: however the day went, it was no warmer.
highest(line) := reading(line) if {
	reading(line)
} else := {"c": figure.max, "figure": figure, "what": "surface"} if {
	figure := line.figures.reading_surface_c
	_is_range(figure)
	not _is_own_range(line, figure)
} else := {"c": figure.max, "figure": figure, "what": "air"} if {
	figure := line.figures.reading_air_c
	_is_range(figure)
	not _is_own_range(line, figure)
}

# A column of "air and surface, min-max" that repeats the range of the product's data tells what is allowed, and nobody
# read it.
_is_own_range(line, figure) if {
	some item in _put_on(line)
	own := facts.product_of(item).figures
	is_number(own.apply_min_c.min)
	is_number(own.apply_max_c.max)
	abs(own.apply_min_c.min - figure.min) < data.temperature.reading.tolerance_k
	abs(own.apply_max_c.max - figure.max) < data.temperature.reading.tolerance_k
}

# lowest is the reading, or the bottom of a range: however the day went, it was no cooler.
lowest(line) := reading(line) if {
	reading(line)
} else := object.union(highest(line), {"c": highest(line).figure.min})

# limits are the least temperatures that the row or the data of its products state: for its sheet, primer and beads.
limits(line) := [{"item": item, "figure": figure} |
	some item in _put_on(line)
	figure := _stated(line, item)
	measure.is_sound(figure)
	is_number(figure.min)
	figure.min <= data.temperature.reading.most_c
	not is_for_shop(figure.text)
]

# uppers are the most that they state.
uppers(line) := [{"item": item, "figure": figure} |
	some item in _put_on(line)
	figure := facts.product_of(item).figures.apply_max_c
	measure.is_sound(figure)
	is_number(figure.max)
	not is_for_shop(figure.text)
]

# A sheet that the edge runs to, over or clear of went on in its own run.
_put_on(line) := [item |
	some item in line.items
	item.slot in data.temperature.reading.slots
	facts.is_there(item)
	not _is_neighbor(item)
]

_is_neighbor(item) if {
	item.slot == "edge"
	item.relation != ""
	item.class in data.temperature.reading.sheet_classes
}

# is_for_shop: the limit is stated for work in the shop ("60 to 95, shop").
is_for_shop(text) if regex.match(data.temperature.reading.shop, text)

_stated(line, item) := line.figures.apply_min_c if {
	item.id == facts.main_items(line)[0].id
} else := line.figures.primed_apply_min_c if {
	item.id == facts.main_items(line)[0].id
} else := facts.product_of(item).figures.apply_min_c

_is_range(figure) if {
	measure.is_sound(figure)
	is_number(figure.min)
	figure.max > figure.min
}

_is_one(figure) if {
	measure.is_sound(figure)
	is_number(figure.min)
	figure.min == figure.max
	object.get(figure, "other", null) == null
}
