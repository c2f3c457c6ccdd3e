# METADATA
# title: Vapor classes
# description: |
#   The class of a material by its stated permeance, else by its traits, else by the usual figure of its family.
package lib.vaporclass

import data.lib.facts
import data.lib.measure

# by_ng is I, II, III or none; the bound belongs to the tighter class.
by_ng(ng) := [step.class |
	some step in data.vapor.classes.steps
	ng <= step.max_ng * (1 + data.vapor.classes.rounding)
][0]

default by_ng(_) := "none"

# of is the class of an item or layer, "" where it is not known.
of(thing) := by_ng(ng) if {
	ng := object.get(thing, "vapor_ng", null)
	is_number(ng)
} else := by_ng(measure.high(figure)) if {
	figure := facts.product_of(thing).figures.vapor_ng
	measure.is_sound(figure)
} else := "I" if {
	facts.has_key(thing, data.vapor.classes.tight_keys)
} else := "none" if {
	facts.has_key(thing, data.vapor.classes.open_keys)
} else := by_ng(usual_ng[thing.family])

default of(_) := ""

# is_tight: class I or II.
is_tight(thing) if of(thing) in data.vapor.classes.tight

# is_open: no retarder at all, by its figure or its kind.
is_open(thing) if of(thing) == "none"

# usual_ng is the usual permeance of a family at its usual thickness.
usual_ng := {material.id: ng |
	some material in data.knowledge.materials
	ng := _ng(material)
}

_ng(material) := material.permeance_ng.value if {
	material.permeance_ng
} else := data.vapor.classes.delta0_ng / material.sd_m.value if {
	material.sd_m
} else := (data.vapor.classes.delta0_ng * 1000) / (material.mu.value * material.usual_mm.value)
