# METADATA
# title: Whether a primer fits its sheet
# description: |
#   Holds the primers that a row names against the data of the sheet and of the primers. One that fits is enough,
#   since a row may name others for other faces. A primer without data is not judged.
package lib.primer_fit

import data.lib.facts
import data.lib.primer
import data.lib.sheet
import data.lib.target

# problem says why none of the primers fits the bed: {"bed", "why", "by", "slots"}; undefined where one does, or where
# it cannot be told.
problem(bed, primers) := {"bed": bed, "why": _listed(want), "by": facts.product_of(bed.item), "slots": ["accepts"]} if {
	want := primer.asked(bed)
	want.primer == "listed"
	_all_known(primers)
	_none_of(want, primers)
} else := {"bed": bed, "why": _barred(bad), "by": facts.product_of(bad.primer), "slots": ["keep_off"]} if {
	_all_known(primers)
	count([p | some p in primers; not _bars(p, bed)]) == 0
	bad := _bars(primers[0], bed)
} else := {"bed": bed, "why": _barred(bad), "by": facts.product_of(bad.primer), "slots": ["keep_off"]} if {
	_all_known(primers)
	every p in primers { _bars_face(p, bed) }
	bad := _bars_face(primers[0], bed)
} else := {"bed": bed, "why": _other(primers[0]), "by": facts.product_of(primers[0]), "slots": ["suits"]} if {
	_all_known(primers)
	count([p | some p in primers; not _is_for_others(p, bed)]) == 0
	not _takes_one(bed, primers)
}

# own_rule: another rule tells this bed.
own_rule(bed, primers) if eats_foam(bed, primers)

own_rule(bed, primers) if swells_acrylic(bed, primers)

# eats_foam: polystyrene under nothing but solvent-borne primer, and the sheet's data does not list it there. "P-1 or
# P-2 on porous faces" names no foam, and lets no solvent onto it.
eats_foam(bed, primers) if {
	facts.has_key(bed.under, ["polystyrene"])
	all_solvent(primers)
	not _takes_one_by_name(bed, primers)
}

_takes_one_by_name(bed, primers) if {
	_takes_one(bed, primers)
	some a in facts.product_of(bed.item).accepts
	not a.except
	sheet.takes(a, bed.under) > 0
}

# swells_acrylic: an acrylic sheet over nothing but solvent-borne primer that its data does not list there.
swells_acrylic(bed, primers) if {
	bed.chemistry == "acrylic"
	all_solvent(primers)
	not _takes_one(bed, primers)
}

# all_solvent: at least one primer, and all of them solvent-borne.
all_solvent(primers) if {
	count(primers) > 0
	every p in primers { primer.carrier(p) == "solvent" }
}

# bars: the data of the primer or of the sheet keeps the two apart.
bars(bed, primers) if {
	some p in primers
	_bars(p, bed)
}

bars(bed, primers) if {
	some t in facts.product_of(bed.item).keep_off
	not t.except
	some p in primers
	target.means(t, p)
}

_takes_one(bed, primers) if {
	want := primer.asked(bed)
	some p in primers
	primer.takes_it(want, p)
}

_none_of(want, primers) if {
	not _takes_any(want, primers)
	count(want.primers) > 0
}

_takes_any(want, primers) if {
	some p in primers
	primer.takes_it(want, p)
}

# A tag that is not on the data sheets is asked for elsewhere.
_all_known(primers) if {
	count(primers) > 0
	every p in primers { facts.product_of(p) }
}

_bars(p, bed) := {"primer": p, "target": t} if {
	t := [x | some x in facts.product_of(p).keep_off; not x.except; target.means(x, bed.item)][0]
}

# A metal that a primer is kept off, or another face by its own name; of concrete and masonry most data bars a state
# and not the face.
_is_face(t, under) if {
	facts.has_key(under, ["metal"])
	under.family in t.keys
}

_is_face(t, under) if {
	facts.has_key(under, ["metal"])
	{key | some key in t.keys} == {"metal"}
}

_is_face(t, under) if {
	under.family == t.keys[0]
	not facts.has_key(under, data.pairing.primer.barred_by_state)
}

# The primer's own data keeps it off the face under the sheet. Metal that takes no primer needs none, and the row's
# primer is then for its other faces, unless the row says which it is for.
_bars_face(p, bed) := {"primer": p, "target": t} if {
	_is_for_face(p, bed)
	product := facts.product_of(p)
	t := [x | some x in product.keep_off; not x.except; _is_face(x, bed.under); not _is_state(product, x)][0]
}

_is_state(product, t) if {
	some slot, cell in product.cells
	cell == t.at.cell
	regex.match(data.pairing.primer.states, lower(product.texts[slot]))
}

_is_for_face(p, _) if p.primes

_is_for_face(_, bed) if not _takes_none(bed)

_takes_none(bed) if primer.asked(bed).primer == "none"

_is_for_others(p, bed) if {
	bed.item.family != ""
	not _is_for_row(p, bed.line)
	suits := [t | some t in facts.product_of(p).suits; not t.except; _names_sheets(t)]
	count(suits) > 0
	every t in suits { not target.means(t, bed.item) }
}

# A primer's list may name substrates only, and then it says nothing of sheets.
# A row of several products may prime another than its first.
_is_for_row(p, line) if {
	some t in facts.product_of(p).suits
	some item in facts.items_in(line, ["material", "tag", "with"])
	item.product in t.products
}

_names_sheets(t) if {
	some id in t.products
	facts.products_by_id[id].role in data.pairing.chemistry.roles
}

_names_sheets(t) if {
	some one in data.pairing.chemistry.order
	some key in one.keys
	key in t.keys
}

_listed(want) := sprintf("its data takes %s there", [primer.choice(want)])

_barred(bad) := sprintf("the data of %s says to keep it off \"%s\"", [bad.primer.tag, bad.target.text])

_other(p) := sprintf("the data of %s is for \"%s\"", [p.tag, facts.product_of(p).suits[0].text])
