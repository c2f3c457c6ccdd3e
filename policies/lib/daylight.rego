# METADATA
# title: Sheets that do not bear daylight
# description: |
#   Whether the sheet of a row may be seen for good. What its data says comes first; a metal face bears light; bare
#   asphalt and polyethylene do not.
package lib.daylight

import data.lib.facts
import data.lib.measure
import data.lib.sheet
import data.lib.stated
import data.lib.words

# shy is {"item", "level", "why", "by"} for a row whose sheet may not stay in daylight; undefined for all others.
shy(line) := told if {
	item := facts.main_items(line)[0]
	not _may_stay(line, item)
	told := _shy(line, item)
}

_shy(line, item) := {"item": item, "level": "error", "why": "its data says never exposed", "by": _by(item)} if {
	_is_never(line, item)
} else := {"item": item, "level": level, "why": why, "by": _by(item)} if {
	found := stated.figure(line, "exposure_days")
	why := sprintf("%s allows %s", [stated.whose(found), words.days(measure.high(found.figure))])
	level := _by_face(item)
} else := {"item": item, "level": "warning", "why": "such a face does not bear daylight for good", "by": []} if {
	not stated.figure(line, "exposure_days")
	item.class in data.exposure.usual.classes
	facts.has_key(item, data.exposure.light.shy_keys)
	not facts.has_key(item, data.exposure.light.metal_keys)
}

_may_stay(line, _) if stated.figure(line, "exposure_days").figure.no_limit

_may_stay(line, _) if facts.said(line, "may_stay_exposed")

_may_stay(_, item) if facts.said(facts.product_of(item), "may_stay_exposed")

_is_never(line, _) if facts.said(line, "never_exposed")

_is_never(_, item) if facts.said(facts.product_of(item), "never_exposed")

_by_face(item) := "warning" if {
	facts.has_key(item, data.exposure.light.metal_keys)
} else := "error"

_by(item) := [facts.product_of(item)] if facts.product_of(item)

default _by(_) := []

# past_face lists the lines whose sheet runs past the face with no metal edge to end it.
past_face := [line | some line in sheet.lines; runs_past(line)]

# runs_past: the words are said of the sheet, which is not held back behind a metal drip.
runs_past(line) if {
	facts.said(line, "runs_past_face")
	not _is_ended(line)
	not _is_course(line)
	not _is_of_another(line, "runs_past_face")
}

# The edge of a damp-proof course stands proud of its joint.
_is_course(line) if {
	item := facts.main_items(line)[0]
	not facts.has_key(item, data.exposure.light.course_not_keys)
	some text in [item.name, item.text, line.place]
	regex.match(data.exposure.light.course, text)
}

_is_ended(line) if {
	some signal in ["held_back", "drip_edge"]
	facts.said(line, signal)
}

# left_open: the row says that its sheet stays in view.
left_open(line) if line.dates.cover.state == "open"

left_open(line) if {
	facts.said(line, "stays_exposed")
	not _is_of_another(line, "stays_exposed")
}

# Another material in the same clause is meant: "brick joint stays in view", "metal sill runs past the face". A drip of
# no known metal is no material, and the brick is what a sheet runs past.
_is_of_another(line, signal) if {
	some item in line.items
	not item.slot in ["material", "tag"]
	facts.is_there(item)
	item.class in data.exposure.light.other_classes[signal]
	not endswith(item.family, "-unspecified")
	signal in item.signals
	not _names_sheet(line, signal)
}

_names_sheet(line, signal) if {
	some item in line.items
	signal in item.signals
	item.class in data.exposure.usual.classes
}
