# METADATA
# title: Sheet thinner than the project asks
# description: |
#   The notes ask for a least thickness, and the row's own figure or its product's data is below it. A thin sheet
#   bridges less, seals less around screws and tears at corners; by the second year it leaks at the fasteners.
#   Rows of the same product are told once. It does not apply to figures within rounding: 40 mil is 1.016 mm, is
#   printed as 1.0 mm, and is equal.
# custom:
#   id: performance-thickness-limit
#   topic: performance
#   severity: error
#   reason: The sheet is thinner than the project's notes ask.
#   remedy: Use a sheet of the thickness asked for, or get the change accepted in writing.
#   source: the project's notes
#   basis: source-read
#   example: "R-08 is 0.6 mm thick; the notes ask for 1.0 mm"
#   looks: across rows
package performance.thickness_limit

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.thick

findings contains found if {
	some hits in _by_sheet
	hit := hits[0]
	slots := array.concat(["material"], ["thickness" | hit.thick.own])
	others := [finding.related(h.line, slots, "the same sheet") | some h in array.slice(hits, 1, count(hits))]
	found := finding.at_with(hit.line, slots, _message(hit), {"related": array.concat(_because(hit), others)})
}

_by_sheet := {key: hits |
	some key in {one.key | some one in _hits}
	hits := [hit | some hit in _hits; hit.key == key]
}

_hits := [{"key": _key(line, thickness), "line": line, "thick": thickness, "limit": limit} |
	count(limits.by_kind.thickness_mm) > 0
	some line in facts.live_lines
	thickness := thick.of(line)
	asked := _nearest([limit |
		some limit in limits.limits_for("thickness_mm", line, thickness.item.keys, line.role)
		not _is_of_others(limit, thickness.item)
		not _gives_way(limit, thickness.item)
	])
	limit := limits.highest_min(asked)
	thick.under(thickness.mm, limit.min)
]

# Whether the row keeps to the data of its product is told by another rule.
_gives_way(limit, item) if {
	limits.yields(limit)
	facts.product_of(item).figures.thickness_mm.min > 0
}

# What the notes ask of the material by name counts before what they ask of a place and of all that is there.
# "Fluids 90 mil dry" asks nothing of a sheet, and "self-adhered 40 mil" nothing of a fluid.
_is_of_others(limit, item) if {
	_asks_films(limit)
	not thick.is_film(item)
}

_is_of_others(limit, item) if {
	regex.match(data.performance.thickness.film.stuck, lower(limit.text))
	not _asks_films(limit)
	thick.is_film(item)
}

# "Air barrier sheets 40 mil" asks nothing of a flashing tape, nor of a metal foil for through-wall flashing.
_is_of_others(limit, item) if {
	item.class in data.performance.thickness.strip_classes
	regex.match(data.performance.thickness.walls, lower(limit.text))
	not regex.match(data.performance.thickness.strips, lower(limit.text))
}

_asks_films(limit) if regex.match(data.performance.thickness.film.asked, lower(limit.text))

_nearest(asked) := named if {
	named := [limit | some limit in asked; count(limit.keys) > 0]
	count(named) > 0
} else := asked

_key(_, thickness) := thickness.item.product if thickness.item.product != ""

_key(line, thickness) := line.id if thickness.item.product == ""

_because(hit) := array.concat(
	[finding.related_product(product, ["thickness"], "its data") |
		product := facts.product_of(hit.thick.item)
		not hit.thick.own
	],
	[finding.related_address(hit.limit.at, hit.limit.text)],
)

_message(hit) := sprintf("%s is %s thick; the notes ask for %s or more", [
	hit.thick.item.text,
	measure.as_said("length", hit.thick.figure),
	measure.written(hit.limit.min, "length", hit.thick.figure),
])
