# METADATA
# title: Judgements between two materials
# description: |
#   Picks the judgement for two materials from the table of pairs. A pair of families beats a family with a trait, and
#   that beats two traits; at the same rank the worse one counts. Without a row there is no judgement.
package lib.rows

# best lists the judgements of the highest rank for a contact: [] where the table knows none.
best(contact) := [c | some c in found; c.rank == top] if {
	found := candidates(
		contact.a.keys,
		contact.b.keys,
		{contact.a.family, contact.b.family},
		data.contact.judging.exposure[contact.kind],
		is_wet(contact),
	)
	top := max([c.rank | some c in found])
} else := []

# candidates holds {"row", "rank", "ordered"} for every row that fits the keys of both sides.
candidates(a_keys, b_keys, families, exposure, wet) := {found |
	some x in a_keys
	some y in b_keys
	some row in between(x, y, exposure)
	row.exposure == exposure
	_in_state(row, wet)
	not _is_without_solvent(row, a_keys, b_keys)
	found := {"row": row, "rank": count({row.a, row.b} & families) - _stand_in(row), "ordered": _ordered(row)}
}

# worst picks the worst of several candidates; the id settles a tie, so that the answer never varies.
worst(found) := [c | some c in found; c.row.id == key[4]][0] if {
	key := max([_weight(c) | some c in found])
}

# is_wet: a bead, mastic or primer is wet once, whatever the row says.
default is_wet(_) := false

is_wet(contact) if contact.wet

is_wet(contact) if contact.a.class in data.contact.judging.wet_classes

is_wet(contact) if contact.b.class in data.contact.judging.wet_classes

_weight(c) := [
	data.contact.judging.badness[c.row.verdict],
	to_number(c.ordered),
	data.contact.judging.severity[c.row.severity],
	c.row.confidence,
	c.row.id,
]

# between is the set of rows for two keys. Water runs one way only; a touch has no direction that the words tell.
between(x, y, "runoff") := _listed(x, y)

between(x, y, exposure) := _listed(x, y) | _listed(y, x) if exposure != "runoff"

_listed(x, y) := {row | some row in data.knowledge.pairs[x][y]; row.a == x}

_in_state(row, _) if row.state == "any"

_in_state(row, wet) if {
	row.state in {"uncured", "cured"}
	wet == true
}

_in_state(row, wet) if {
	row.state == "cured"
	not wet
}

# A family is usually made with solvent, and this one is told to have none: its solvent harms nothing.
_is_without_solvent(row, a_keys, b_keys) if {
	row.mechanism == "solvent-attack"
	some family in {row.a, row.b}
	"solvent-borne" in data.knowledge.families[family].traits
	not "solvent-borne" in a_keys
	not "solvent-borne" in b_keys
}

# A row that is meant for want of a better one gives way to any other.
_stand_in(row) := 1 if {
	regex.match(data.contact.judging.stand_in, row.condition)
} else := 0

_ordered(row) if row.order in {"a-over-b", "b-over-a"}

default _ordered(_) := false
