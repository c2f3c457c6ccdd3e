# METADATA
# title: What a swap loses
# description: |
#   Which figures of a swap got worse or better, and how badly: a loss that changes nothing on this wall is mild.
package lib.loss

import data.lib.facts
import data.lib.hot_cover
import data.lib.limits
import data.lib.measure
import data.lib.swap
import data.lib.words

# worse lists {"kind", "text", "severity"} for every figure of a swap that got worse.
worse(one) := [{"kind": f.kind, "text": text(f), "severity": severity(one, f)} |
	some f in one.swap.figures
	is_worse(f)
]

# better lists the words of every figure that got better.
better(one) := [text(f) | some f in one.swap.figures; is_better(f)]

# text is "thickness 32 mil instead of 40 mil".
text(f) := sprintf("%s %s instead of %s", [
	data.substitution.properties[f.kind].name,
	said(f.kind, f.now),
	said(f.kind, f.was),
])

# said is a figure in its author's words, with its unit.
said(kind, figure) := "without limit" if {
	figure.no_limit
} else := words.days(measure.low(figure)) if {
	_is_bare(figure)
	data.lib.measures.kinds[kind] == "days"
} else := sprintf("%s %s", [figure.text, measure.unit_of(data.lib.measures.kinds[kind], figure).unit]) if {
	_is_bare(figure)
} else := measure.as_said(data.lib.measures.kinds[kind], figure)

# The unit of a bare "0.003" stands in the heading.
_is_bare(figure) if regex.match(`^[\d\s.,]+$`, figure.text)

is_worse(f) if f.order == data.substitution.properties[f.kind].worse

is_worse(f) if {
	f.kind == "vapor_ng"
	f.order in {"lower", "higher"}
	_vapor_worse(measure.low(f.was), measure.low(f.now))
}

# A barrier must stay tight, a permeable sheet open; a crossing by a hair is no change.
_vapor_worse(was, now) if {
	was <= data.substitution.vapor.barrier_max_ng
	swap.vapor_class(now) > swap.vapor_class(was)
	now > was * data.substitution.vapor.factor
}

_vapor_worse(was, now) if {
	was >= data.substitution.vapor.permeable_min_ng
	now < data.substitution.vapor.permeable_min_ng
	now * data.substitution.vapor.factor < was
}

is_better(f) if {
	f.kind != "vapor_ng"
	f.order in {"lower", "higher"}
	f.order != data.substitution.properties[f.kind].worse
}

# severity is note for a loss that the wall does not feel, unless the specified schedule asks for equal or better.
severity(one, f) := "note" if {
	_mild(one, f)
	not asked(f)
} else := "warning"

# is_raised: a loss that the wall does not feel, told as a warning since better is asked for.
is_raised(one, f) if {
	is_worse(f)
	_mild(one, f)
	asked(f)
}

# asked: the notes of the specified schedule ask for this figure to be equal or better, whatever the plan.
asked(f) if {
	input.comparison.asks != ""
	not f.kind in data.substitution.milder.unasked
}

_mild(_, f) if {
	f.kind == "thickness_mm"
	measure.low(f.now) >= measure.low(f.was) * (1 - data.substitution.milder.thickness_share)
}

# Mils tell how much there is of one stuff: of another they compare nothing, and an open sheet does its work by its
# permeance and its tightness to air.
_mild(one, f) if {
	f.kind == "thickness_mm"
	_keeps_min(one, f, "thickness_mm")
	not _is_of_one_stuff(one.swap)
}

_mild(one, f) if {
	f.kind == "thickness_mm"
	_keeps_min(one, f, "thickness_mm")
	facts.has_key(one.swap.was, data.substitution.milder.open_keys)
}

_is_of_one_stuff(offer) if count(swap.stuff(offer.was) & swap.stuff(offer.now)) > 0

# Nothing is known of one of them, so that the mils are all there is to compare.
_is_of_one_stuff(offer) if {
	some side in [offer.was, offer.now]
	count(swap.stuff(side)) == 0
}

_mild(one, f) if {
	f.kind == "air_lsm2"
	measure.high(f.now) <= data.substitution.milder.air_lsm2
	_keeps_max(one, f)
}

_mild(_, f) if f.kind == "apply_max_c"

_mild(one, f) if {
	f.kind == "apply_min_c"
	_warm_enough(one)
}

_mild(one, f) if {
	f.kind == "service_max_c"
	measure.high(f.now) >= measure.high(f.was) - data.substitution.milder.service_c
	_keeps_min(one, f, "service_c")
}

# Without metal or membrane over it that the sun heats, a sheet in a wall gets no hotter than this; what the notes ask
# for is held against the row itself.
_mild(one, f) if {
	f.kind == "service_max_c"
	measure.high(f.now) >= data.substitution.milder.wall_c
	not hot_cover.any(one.line)
	not hot_cover.dark(one.line)
}

# A bead has no hot side of its own; the limit of the project is what it must keep.
_mild(one, f) if {
	f.kind == "service_max_c"
	one.swap.now.class in data.substitution.roles.liquids
	_keeps_min(one, f, "service_c")
}

_mild(one, f) if {
	f.kind == "exposure_days"
	one.line.spans.bare_days.last <= measure.low(f.now)
	not _is_asked(one, f)
}

_mild(one, f) if {
	f.kind == "voc_gl"
	_keeps_max(one, f)
	not _is_unusual(one, f)
}

# The specified row asks for a rating of more days, whatever the plan.
_is_asked(one, f) if {
	some asked in one.pair.figures
	asked.kind == "min_exposure_days"
	measure.low(asked.was) > measure.low(f.now)
}

# Where no limit is stated, more than is usually allowed is no small matter.
_is_unusual(one, f) if {
	count(limits.limits_for(f.kind, one.line, one.swap.now.keys, one.swap.now.role)) == 0
	measure.high(f.now) > data.performance.voc.usual[one.swap.now.role].max_gl * (1 + data.performance.voc.share)
}

# The limits of the project that hold for the offered material are kept.
_keeps_max(one, f) if {
	stated := limits.limits_for(f.kind, one.line, one.swap.now.keys, one.swap.now.role)
	every limit in stated { _below(measure.high(f.now), limit.max) }
}

_keeps_min(one, f, kind) if {
	stated := limits.limits_for(kind, one.line, one.swap.now.keys, one.swap.now.role)
	every limit in stated { _above(measure.high(f.now), limit.min) }
}

_below(_, bound) if bound == null

_below(value, bound) if value <= bound * (1 + data.substitution.milder.rounding_share)

_above(_, bound) if bound == null

_above(value, bound) if value >= bound - data.substitution.milder.rounding_c

_warm_enough(one) if facts.said(one.line, "heated")

_warm_enough(one) if {
	window := facts.windows_by_line[one.line.id]
	odds := [check.share_below |
		some check in window.checks
		check.bound == "apply_min_c"
		check.text == one.swap.now.text
	]
	count(odds) > 0
	max(odds) <= data.substitution.milder.cold_share
}
