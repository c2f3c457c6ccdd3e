# METADATA
# title: Lap too short
# description: |
#   Sheets shrink a little, hands are cold, and the first half inch at an edge seldom holds: a short lap is open
#   within two years and is the first place to let water through. The highest figure that the notes state for the
#   place or the product's data asks for counts; without one, 2 in (50 mm) for adhered sheet and 3 in (75 mm) for
#   a through-wall flashing are asked about. It does not apply to a lap that is just on the figure; 50 mm is taken
#   for 2 in and 100 mm for 4 in. A lap that a remark tells counts beside that of the column, and a note that gives
#   way to the data of the product does so. What the notes ask a transition to bear on each side of its joint is asked
#   of what a row tells that it bears.
# custom:
#   id: sequence-lap-short
#   topic: sequence
#   severity: error
#   reason: A short lap opens with shrinkage and dirt, and water finds the joint.
#   remedy: Lap the sheet as asked, or strip the joint in with a piece that covers both sides.
#   source: the project's notes; else common practice for sheets, handbook and brick-industry advice for flashings
#   basis: common-practice
#   example: "Through-wall flashing with end laps of 1 in; the notes ask for 4 in"
package sequence.lap_short

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming
import data.lib.sheet

findings contains found if {
	some line in sheet.lines
	short := _shorts(line)
	count(short) > 0
	message := naming.say("%s laps %s", [
		naming.plain(_lapped(line)),
		concat("; and ", [one.says | some one in short]),
	])
	cells := [cell | some one in short; some cell in one.cells]
	found := finding.at_with(line, array.concat(["material", "tag"], cells), message, {
		"severity": finding.worst({one.severity | some one in short}),
		"related": [note | some i, one in short; not _is_same_note(short, i); some note in one.related],
	})
}

_shorts(line) := short if {
	short := [one | some kind in ["lap_mm", "end_lap_mm"]; one := _short(line, kind)]
	count(short) > 0
} else := [one | one := _short(line, "told_lap_mm")]

# What a transition bears on the sides of its joint. Where a note tells several figures, each for another thing that it
# bears on, the least counts.
findings contains found if {
	some line in sheet.lines
	borne := line.figures.bearing_mm
	measure.is_sound(borne)
	asked := limits.limits_for("bearing_mm", line, _lapped(line).keys, line.role)
	least := min([limit.min | some limit in asked])
	measure.low(borne) < least - _tolerance(least)
	limit := [one | some one in asked; one.min == least][0]
	message := naming.say("%s bears %s; the notes ask for %s", [
		naming.plain(_lapped(line)),
		measure.as_said("length", borne),
		measure.beside(least, "length", limit, borne),
	])
	found := finding.at_with(line, array.concat(["material", "tag"], measure.cell(borne, "lap_mm")), message, {
		"related": [finding.related_address(limit.at, limit.text)],
	})
}

# Metal that its own row or data calls a through-wall flashing laps at its ends as the notes ask. A heading over
# rows does not call it so: drips and trims stand there too.
findings contains found if {
	some line in facts.live_lines
	line.role in data.sequence.order.metal_roles
	short := [one | one := _short_metal(line, "end_lap_mm")]
	count(short) > 0
	message := naming.say("%s laps %s", [naming.plain(_lapped(line)), concat("; and ", [one.says | some one in short])])
	cells := [cell | some one in short; some cell in one.cells]
	found := finding.at_with(line, array.concat(["material", "tag"], cells), message, {
		"related": [note | some i, one in short; not _is_same_note(short, i); some note in one.related],
	})
}

_short_metal(line, kind) := one if {
	one := _short(line, kind)
	need := _most(_of_metal(line, kind))
	one.related == need.related
}

_of_metal(line, kind) := [one |
	some one in _noted(line, _lapped(line), kind)
	one.like.scope == "through-wall"
	own := [object.get(line.texts, slot, "") | some slot in ["material", "type"]]
	data_of := [text | some text in facts.product_of(_lapped(line)).texts]
	some text in array.concat([line.place], array.concat(own, data_of))
	regex.match(data.sequence.lap.through_wall_called, lower(text))
]

# Sides and ends that are both short are one mistake of one row.
_short(line, kind) := {
	"says": says,
	"cells": measure.cell(lap, "lap_mm"),
	"severity": need.severity,
	"related": need.related,
} if {
	lap := line.figures[kind]
	measure.is_sound(lap)
	measure.low(lap) > 0
	not _may_be_of_another(line, kind)
	need := _need(line, _lapped(line), kind)
	measure.low(lap) < need.mm - _tolerance(need.mm)
	says := sprintf("%s%s; %s %s", [
		measure.as_said("length", lap),
		{"lap_mm": "", "end_lap_mm": " at its ends", "told_lap_mm": " by the words of the row"}[kind],
		need.says,
		measure.beside(need.mm, "length", need.like, lap),
	])
}

# An inch is taken for 25 mm, so that what is missing grows with the lap.
_tolerance(mm) := max([data.sequence.lap.tolerance_mm, mm * data.sequence.lap.tolerance_share])

_is_same_note(short, i) if {
	some earlier, one in short
	earlier < i
	one.related == short[i].related
}

_may_be_of_another(line, "lap_mm") if {
	some other in facts.items_in(line, ["with"])
	other.unknown
}

# A row of several sheets does not say which of them laps: it is read as the one that asks least.
_lapped(line) := least[0] if {
	several := [{"item": item, "mm": mm} |
		some item in array.concat(facts.main_items(line), facts.items_in(line, ["with"]))
		mm := facts.product_of(item).figures.lap_mm.min
	]
	count({s.item.product | some s in several}) > 1
	mm := min([s.mm | some s in several])
	least := [s.item | some s in several; s.mm == mm]
} else := facts.main_items(line)[0]

# The ends of a sheet have a figure of their own where the notes tell them apart from its sides.
_need(line, item, kind) := need if {
	kind == "end_lap_mm"
	stated := array.concat(_noted(line, item, kind), _of_product(item, kind))
	need := _most(stated)
} else := _of_all(line, item)

_most(stated) := need if {
	top := max([s.mm | some s in stated])
	need := [s | some s in stated; s.mm == top][0]
}

_of_all(line, item) := need if {
	need := _most(array.concat(array.concat(_noted(line, item, "lap_mm"), _data_of(line, item)), _of_row(line)))
} else := object.union(usual, {"like": line.figures.lap_mm, "related": []}) if {
	_is_adhered(item)
	usual := _usual(line)
}

_is_adhered(item) if sheet.chemistry(item) != ""

_is_adhered(item) if {
	item.class in data.exposure.usual.classes
	facts.has_key(item, data.sequence.lap.adhered_keys)
}

_noted(line, item, kind) := [{
	"mm": l.min,
	"says": "the notes ask for",
	"like": l,
	"severity": "error",
	"related": [note],
} |
	own := _of_product(item, kind)
	l := limits.highest_min([one |
		some one in limits.limits_for(kind, line, item.keys, line.role)
		not _gives_way(one, own)
		not _is_of_sheets_alone(one, item)
		not _is_bedded(one, item)
		not _is_of_waterproofing(one, line, item)
		not _is_borne(line, kind, one.text)
	])
	note := finding.related_address(l.at, l.text)
]

_is_of_sheets_alone(limit, item) if {
	fluids := data.sequence.lap.fluids
	item.family in array.concat(data.sequence.edge.edgeless, fluids.families)
	regex.match(fluids.sheets, lower(limit.text))
	not regex.match(fluids.named, lower(limit.text))
}

# What the waterproofing laps is not asked of the sheets of the walls above it.
_is_of_waterproofing(limit, line, item) if {
	ground := data.sequence.lap.waterproofing
	regex.match(ground.asked, lower(limit.text))
	said := [object.get(line.texts, slot, "") | some slot in ground.slots]
	own := [text | some text in facts.product_of(item).texts]
	every text in array.concat([line.place], array.concat(said, own)) {
		not regex.match(ground.said, lower(text))
	}
}

# What a strip bears on each side of a joint or opening is the width of its hold there, and no lap over its like.
_is_borne(line, kind, asked) if {
	regex.match(data.sequence.lap.borne.said, lower(line.figures[kind].text))
	not regex.match(data.sequence.lap.borne.asked, lower(asked))
}

# A strip of silicone is bedded in beads, and laps no sheet unless the note names it.
_is_bedded(limit, item) if {
	item.family in data.sequence.lap.bedded.families
	not regex.match(data.sequence.lap.bedded.named, lower(limit.text))
}

# Its data, where that may tell the lap over its like, is not asked of what it bears on.
_data_of(line, item) := [one |
	some one in _of_product(item, "lap_mm")
	not _is_borne(line, "lap_mm", one.like.text)
	not _is_fitting(line)
]

# The seam of a roof sheet is that of its rolls; the flange of a boot or corner made of it is as wide as it is made.
_is_fitting(line) if {
	line.role == "roofing"
	regex.match(data.sequence.lap.fittings, lower(object.get(line.texts, "material", "")))
}

_of_row(line) := [{"mm": lap.min, "says": "the row asks for", "like": lap, "severity": "error", "related": []} |
	lap := line.figures.min_lap_mm
	lap.min > 0
]

_gives_way(limit, own) if {
	count(own) > 0
	limits.yields(limit)
}

_of_product(item, kind) := [{
	"mm": lap.min,
	"says": "its data asks for",
	"like": lap,
	"severity": "error",
	"related": [],
} |
	lap := facts.product_of(item).figures[kind]
	lap.min > 0
]

_usual(line) := {"mm": data.sequence.lap.through_wall_mm, "says": says, "severity": severity} if {
	_is_through_wall(line)
	says := "a through-wall flashing usually laps at least"
	severity := _severity(line.figures.lap_mm)
} else := {"mm": data.sequence.lap.usual_mm, "says": says, "severity": "warning"} if {
	says := "adhered sheet usually laps at least"
}

# Between the figures of sheets and of flashings sources differ.
_severity(lap) := "warning" if {
	measure.low(lap) < data.sequence.lap.usual_mm - data.sequence.lap.tolerance_mm
} else := "note"

_is_through_wall(line) if {
	some text in [line.group, line.place, line.mark]
	regex.match(data.sequence.lap.through_wall, lower(text))
}
