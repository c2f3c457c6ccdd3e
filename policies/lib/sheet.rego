# METADATA
# title: Self-adhered sheets and what lies under them
# description: |
#   The own sheets of a line with the chemistry of their adhesive, and the beds: one own material on one substrate.
package lib.sheet

import data.lib.facts
import data.lib.target

# beds holds every own material of a sheet's line on every substrate of that line that is no lap:
# {"line", "item", "under", "face", "chemistry"}; face and chemistry are "" where they are not known.
beds := [bed | some line in lines; some bed in beds_of(line)]

beds_of(line) := [bed |
	some item in facts.main_items(line)
	some under in facts.items_in(line, ["substrate"])
	not under.class in data.pairing.kinds.laps
	bed := {
		"line": line,
		"item": item,
		"under": under,
		"face": face(under),
		"chemistry": chemistry(item),
	}
]

# lines are the live lines whose own material is a sheet or flashing.
lines := [line | some line in facts.live_lines; line.role in data.pairing.chemistry.roles]

# stuck lists the lines with a self-adhered sheet, with its item.
stuck := [{"line": line, "item": items[0], "chemistry": chemistry(items[0])} |
	some line in lines
	items := [item | some item in facts.main_items(line); chemistry(item) != ""]
	count(items) > 0
]

# chemistry is butyl, acrylic or asphaltic for a self-adhered sheet, "" for all else.
chemistry(item) := [one.id |
	some one in data.pairing.chemistry.order
	facts.has_key(item, one.keys)
	item.class in data.pairing.chemistry.classes
	not facts.has_key(item, data.pairing.chemistry.not_keys)
	not item.family in data.pairing.chemistry.not_families
][0]

default chemistry(_) := ""

# face is the row of the matrix that a substrate stands for, "" where none does.
face(under) := narrow if {
	under.family != ""
	narrow := [one.to |
		some one in data.pairing.faces.narrower
		under.family in one.from
		_is_narrower(one, under)
	][0]
} else := data.pairing.faces.families[under.family]

default face(_) := ""

_is_narrower(one, under) if one.key in under.keys

_is_narrower(one, under) if regex.match(one.words, lower(under.text))

# takes says how a target of product data covers a substrate: 3 by name, 2 by family or trait, 1 by its kind, 0 as
# one of all ("*"); undefined where it does not.
takes(accepted, under) := 3 if {
	target.names(accepted, under)
} else := 2 if {
	target.covers(accepted, under)
} else := 1 if {
	some kind in kinds(accepted.keys)
	kind in kinds(under.keys)
} else := 0 if {
	"*" in accepted.keys
} else := 0 if {
	not is_read(accepted)
	regex.match(data.pairing.kinds.all_words, lower(accepted.text))
}

# is_read: a target was read as families, traits or products.
is_read(said) if some _ in said.keys

is_read(said) if some _ in said.products

# kinds of substrate that keys stand for: by family, else by trait.
kinds(keys) := by_family if {
	by_family := {kind | some key in keys; some kind in data.pairing.kinds.by_family[key]}
	count(by_family) > 0
} else := {kind | some key in keys; some kind in data.pairing.kinds.by_trait[key]}
