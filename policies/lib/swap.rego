# METADATA
# title: Swaps
# description: |
#   One material in place of another, as the comparison of a document tells it: all swaps of live lines, how they are
#   named in a message, and where a finding on them stands.
package lib.swap

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

# all lists the swaps of live lines, with the line and the pair that each stands in, unless the row says that the
# designer has answered for them.
all := [{"line": line, "pair": pair, "swap": swap} |
	some pair in input.comparison.pairs
	line := facts.lines_by_id[pair.line]
	not line.struck
	not facts.said(line, "change_accepted")
	some swap in pair.swaps
]

# own lists those of the line's own material.
own := [one | some one in all; one.swap.slot in {"material", "tag"}]

# at_its_own_rows lists each swap where it is the row's own material, and as a neighbor only if it is so in no row.
at_its_own_rows := [one |
	some one in all
	not _told_elsewhere(one.swap)
]

_told_elsewhere(swap) if {
	not swap.slot in {"material", "tag"}
	swap.now.product != ""
	[swap.was.product, swap.now.product] in _own
}

_own := {[one.swap.was.product, one.swap.now.product] | some one in own}

# compared lists the swaps of which both sides have something to compare.
compared := [one | some one in all; one.swap.was.data; one.swap.now.data]

# names is "Dunk 32 in place of Tib S40", or the product alone where only its data changed.
names(swap) := sprintf("%s in place of %s", [called(swap.now), called(swap.was)]) if not swap.same

names(swap) := sprintf("%s as offered", [called(swap.now)]) if swap.same

# called gives the row's own words; where those break off within a bracket, the kind of material.
called(offer) := offer.text if {
	_is_product(offer)
} else := offer.text if {
	strings.count(offer.text, "(") == strings.count(offer.text, ")")
	count(offer.text) <= 60
} else := naming.uncapped(offer.name) if {
	offer.name != ""
} else := offer.text

_is_product(offer) if offer.tag != ""

_is_product(offer) if offer.data

# stuff is what a sheet is made of or sticks by, in words.
stuff(offer) := {word | some key in offer.keys; word := data.substitution.chemistry.sheets[key]}

# at makes the finding at the submitted line, with the specified row under related.
at(one, message, severity) := finding.at_with(one.line, [one.swap.now.at.cell], message, {
	"severity": severity,
	"related": [specified(one.pair, one.swap)],
})

# specified names the row of the specified schedule; its sheet may stand in the other file.
specified(pair, swap) := _row(pair, swap.was.text)

# row is the same for what is no matter of a swap.
row(pair) := _row(pair, pair.was.text)

_row(pair, text) := {
	"at": {"sheet": pair.was.at.sheet, "row": pair.was.at.row},
	"cells": [],
	"what": sprintf("%s%s", [_file, text]),
}

_file := "specified in this row: " if input.comparison.specified == input.file

_file := sprintf("specified in %s: ", [input.comparison.specified]) if input.comparison.specified != input.file

# sentence joins what is told of a swap: "A in place of B: this, and that".
sentence(swap, parts) := sprintf("%s: %s", [names(swap), words.list(parts)])

# vapor_class is the number of the class of a vapor permeance, from 0 for the tightest.
vapor_class(ng) := count([end | some end in data.substitution.vapor.class_ends_ng; ng > end])
