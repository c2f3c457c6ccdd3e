# METADATA
# title: Self-adhered sheets and what lies under them
# description: |
#   The own sheets of a line with the chemistry of their adhesive, and the beds: one own material on one substrate.
package lib.sheet

import data.lib.facts
import data.lib.target

# beds holds the own material of every sheet's line on every substrate of that line that is no lap:
# {"line", "item", "under", "face", "chemistry"}; face and chemistry are "" where they are not known.
beds := [bed | some line in lines; some bed in beds_of(line)]

beds_of(line) := [bed |
	item := own(line)
	some under in _substrates(line)
	bed := {
		"line": line,
		"item": item,
		"under": under,
		"face": face(under),
		"chemistry": chemistry(item),
	}
]

# beds_with lists the beds of the other sheets that a row names beside its own, which go on the same substrates.
beds_with(line) := [bed |
	some item in facts.items_in(line, ["with"])
	item.class in {"membrane", "tape"}
	some under in _substrates(line)
	bed := {"line": line, "item": item, "under": under, "face": face(under), "chemistry": chemistry(item)}
]

# judged names the materials of beds, as facts of a finding.
judged(beds) := [id | some bed in beds; some id in [bed.item.id, bed.under.id]]

# own is the line's own material: what a tag of its tag or material column stands for, else the first named there.
own(line) := tagged[0] if {
	tagged := [item | some item in facts.items_in(line, ["material", "tag"]); item.tag != ""]
	count(tagged) > 0
} else := known[0] if {
	known := [item | some item in facts.items_in(line, ["material", "tag"]); not item.unknown]
	count(known) > 0
} else := facts.items_in(line, ["material", "tag"])[0]

# lines are the live lines whose own material is a sheet or flashing.
lines := [line | some line in facts.live_lines; line.role in data.pairing.chemistry.roles]

# stuck lists the lines with a self-adhered sheet, with its item.
stuck := [{"line": line, "item": item, "chemistry": chemistry(item)} |
	some line in lines
	item := own(line)
	chemistry(item) != ""
]

# A lap is no substrate; nor is the plain noun beside a tag ("W-1 nailer").
_substrates(line) := [under |
	all := _under(line)
	some under in all
	not under.class in data.pairing.kinds.laps
	not _is_noun_of_tag(under, all)
	not _is_beneath(under, all)
	not _is_in_studs(under)
	not _is_filler(under)
]

# A schedule of joints has no column of substrates: its sheet goes across from the one side to the other.
_under(line) := [side |
	some side in facts.items_in(line, ["left", "right"])
	side.class in data.pairing.kinds.side_classes
] if {
	line.table in _joints
} else := facts.items_in(line, ["substrate"])

_joints := {table.id |
	some table in input.reading.tables
	slots := {column.slot | some column in table.columns}
	every slot in ["left", "right", "material"] { slot in slots }
	not "substrate" in slots
}

# "deck flutes foamed with FC-2": foam or wool that fills what the sheet goes across.
_is_filler(under) if {
	under.class == "insulation"
	under.relation == "with"
	regex.match(data.pairing.kinds.fills, lower(under.clause))
}

# Batts lie between the studs, and no sheet sticks to them.
_is_in_studs(under) if {
	under.class == "insulation"
	regex.match(data.pairing.kinds.in_studs, lower(under.text))
}

_is_in_studs(under) if {
	under.class == "insulation"
	"studs_filled" in under.signals
}

# "cap plate on CMU": the sheet goes on the plate.
_is_beneath(under, all) if {
	some k, other in all
	other == under
	some i, above in all
	i < k
	above.clause == under.clause
	above.at == under.at
	regex.match(sprintf(data.pairing.kinds.beneath, [_plain(above.text), _plain(under.text)]), _plain(under.clause))
}

_plain(text) := trim_space(regex.replace(lower(text), `[^\p{L}\d]+`, " "))

_is_noun_of_tag(under, all) if {
	data.knowledge.families[under.family].generic
	some other in all
	other.product != ""
	other.at == under.at
}

# chemistry is butyl, acrylic or asphaltic for a self-adhered sheet, "" for all else.
chemistry(item) := [one.id |
	some one in data.pairing.chemistry.order
	facts.has_key(item, one.keys)
	_may_be_sheet(item)
	not facts.has_key(item, data.pairing.chemistry.not_keys)
	not item.family in data.pairing.chemistry.not_families
][0]

default chemistry(_) := ""

# Data that tells the stuff and not the form ("SBS-modified asphalt, 40 mil") has no class.
_may_be_sheet(item) if item.class in data.pairing.chemistry.classes

_may_be_sheet(item) if {
	item.class == ""
	item.slot in {"material", "tag"}
}

# face is the row of the matrix that a substrate stands for, "" where none does.
face(under) := narrow if {
	under.family != ""
	narrow := [one.to |
		some one in data.pairing.faces.narrower
		under.family in one.from
		_is_narrower(one, under)
	][0]
} else := _face_of[under.family] if {
	not under.family in data.pairing.faces.not_by_family
}

default face(_) := ""

_face_of := {family: id | some id, one in data.knowledge.substrates; some family in one.families}

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
