# METADATA
# title: Primers of a row
# description: |
#   Which primer a row names, what the sheet's own data asks for on a substrate, and what the usual matrix asks.
package lib.primer

import data.lib.facts
import data.lib.sheet

# state is named, none (said so), laps (none, since it goes on sheet of its own kind), blank (an empty primer cell), or
# unclear (words that were not understood, no column).
state(line) := "named" if {
	some item in named(line)
	_counts(line, item)
} else := "named" if {
	some signal in data.pairing.primer.primed_signals
	facts.said(line, signal)
} else := "laps" if {
	regex.match(data.pairing.primer.on_sheet, _words(line))
} else := "none" if {
	some signal in data.pairing.primer.none_signals
	facts.said(line, signal)
} else := "none" if {
	_words(line) in data.pairing.primer.none_words
} # "none - bare block"

else := "none" if {
	_opens_with_none(line)
} else := "blank" if {
	_words(line) in {"", "null"}
	_has_column(line)
	not _is_dated(line)
} else := "unclear"

# named lists the primers of the primer cell; where it names none, those that another cell says are there. Where it
# says that there is none, one in the cell of the substrate is of the work below.
named(line) := in_cell if {
	in_cell := [item | some item in _primers(line); item.slot == "primer"]
	count(in_cell) > 0
} else := [item | some item in _primers(line); item.slot != "substrate"] if {
	_words(line) in data.pairing.primer.none_words
} else := _primers(line)

# A remark that only says that there is no primer names none: "ran out of primer". Nor does one that goes on what the
# sheet touches prime its bed.
_counts(line, item) if {
	_is_named(line, item)
	not _is_elsewhere(line, item)
}

_is_elsewhere(line, item) if {
	item.primes
	every under in facts.items_in(line, ["substrate"]) { under.at.cell != item.primes }
}

_is_named(_, item) if item.slot == "primer"

_is_named(_, item) if item.product != ""

_is_named(line, _) if {
	every signal in data.pairing.primer.none_signals { not facts.said(line, signal) }
}

_primers(line) := [item |
	some item in line.items
	facts.is_there(item)
	_is_primer(line, item)
]

# on keeps of the primers of a row those for the substrate of a bed: a row may give one for each side.
on(bed, primers) := [p | some p in primers; object.get(p, "primes", bed.under.at.cell) == bed.under.at.cell]

# cell words the primer cell: `"-"`, or that it is empty.
cell(line) := sprintf("the primer cell says \"%s\"", [trim_space(line.texts.primer)]) if {
	trim_space(line.texts.primer) != ""
} else := "the row says no primer" if {
	state(line) == "none"
} else := "the primer cell is empty"

# asked is what the data of the sheet says of a substrate: {"primer": none, listed, always or unsaid, "primers",
# "text"}; undefined where its data does not speak of that substrate.
asked(bed) := {"primer": _need(best), "primers": primers, "text": best[0].text} if {
	ranked := [{"rank": rank, "says": a} |
		some a in facts.product_of(bed.item).accepts
		not a.except
		rank := sheet.takes(a, bed.under)
	]
	top := max([r.rank | some r in ranked])
	best := _only([r.says | some r in ranked; r.rank == top])
	primers := {p | some a in best; some p in a.primers}
}

# usual is what the matrix asks of the chemistry on that face; undefined where the sheet has data of its own.
usual(bed) := data.knowledge.substrates[bed.face].needs_primer[bed.chemistry] if not has_data(bed.item)

# has_data: the sheet's product data says on what it goes.
has_data(item) if count([a | some a in facts.product_of(item).accepts]) > 0

# takes_it: what the data asks for includes the named primer.
takes_it(want, primer) if primer.product in want.primers

takes_it(want, primer) if primer.tag in want.primers

# needed: the sheet's data asks for a primer there.
needed(want) if want.primer in {"listed", "always"}

# carrier is solvent, water or "".
carrier(primer) := "solvent" if {
	facts.has_key(primer, ["solvent-borne"])
} else := "water" if {
	facts.has_key(primer, ["water-borne"])
} else := ""

# suits_not: no primer of that carrier suits the face, by the matrix.
suits_not(carried, bed) if {
	codes := data.pairing.primer.codes[carried]
	every code in codes { code in data.knowledge.substrates[bed.face].primer_unfit }
}

# lacks: some rule tells already that the row lacks its primer.
lacks(line) if {
	state(line) in {"none", "blank"}
	some bed in sheet.beds_of(line)
	_asks(bed)
}

_asks(bed) if needed(asked(bed))

_asks(bed) if usual(bed) in data.pairing.primer.needs

_need(best) := "none" if {
	some a in best
	a.primer == "none"
} else := "listed" if {
	some a in best
	a.primer == "listed"
} else := "always" if {
	some a in best
	a.primer == "always"
} else := "unsaid"

# "foam: P-2 only" beats the list that it is an exception to.
_only(best) := narrow if {
	narrow := [a | some a in best; a.only]
	count(narrow) > 0
} else := best

_is_primer(_, item) if item.class == "primer"

# "none, peel and stick" names none, whatever its other words are.
_is_primer(line, item) if {
	item.slot == "primer"
	item.class in {"", "mastic", "other"}
	not _opens_with_none(line)
}

_opens_with_none(line) if {
	first := trim_space(regex.split(`\s[-–—]\s|[,;:(]`, _words(line))[0])
	first in data.pairing.primer.none_words
	first != "-"
}

_words(line) := lower(trim_space(object.get(line.texts, "primer", "")))

_has_column(line) if line.cells.primer

_has_column(line) if {
	some table in input.reading.tables
	table.id == line.table
	some column in table.columns
	column.slot == "primer"
}

_is_dated(line) if line.dates.prime.state in {"day", "span"}

# choice words what is asked for: "P-1 or P-2", "a primer".
choice(want) := concat(" or ", sort(want.primers)) if {
	count(want.primers) > 0
} else := "a primer"
