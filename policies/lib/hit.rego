# METADATA
# title: A told contact as a finding
# description: |
#   Turns a judgement into a finding at the row that says it, with both cells, the other rows beside it, the remedy
#   and source of the judgement, and the product data that says the same.
package lib.hit

import data.lib.facts
import data.lib.finding
import data.lib.hush
import data.lib.naming
import data.lib.product_says
import data.lib.words

# tell makes the finding from the words for a harm; a question to the makers has words of its own.
tell(v, message) := _finding(v, naming.sentence(message)) if v.outcome == "harm"

tell(v, _) := _finding(v, naming.sentence(_question(v))) if {
	v.outcome == "ask"
	not _asking(v.contact)
}

# A question that the notes want answered in writing, and the row tells of no answer.
tell(v, _) := noted(v, _finding(v, naming.sentence(_question(v)))) if {
	v.outcome == "ask"
	_asking(v.contact)
}

# noted adds to a finding the note that asks for a letter, where there is one, and makes a lapse of it.
noted(v, found) := object.union(found, {
	"severity": "warning",
	"message": sprintf("%s; the notes ask for a letter", [found.message]),
	"related": array.concat([finding.related_address(note.at, note.text)], found.related),
}) if {
	note := _asking(v.contact)
} else := found

# _asking is the first note that asks for a letter where a bead like this one meets a sheet like this; undefined without
# one.
_asking(contact) := notes[0] if {
	contact.kind == "direct"
	not hush.has_proof(contact)
	asked := data.contact.judging.asked
	notes := [note |
		some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
		bead.class in asked.bead_classes
		some note in input.project.notes
		some text in regex.split(`[.;]\s`, lower(note.text))
		regex.match(asked.letter, text)
		_is_meant(bead, text)
		some key, words_for in asked.sheets
		key in sheet.keys
		regex.match(words_for, text)
	]
	count(notes) > 0
}

# Beads of any kind, and none by its name: a bead that the note names goes without a letter.
_is_meant(bead, text) if {
	regex.match(data.contact.judging.asked.bead, text)
	not _is_named(bead, text)
}

# Beads of its chemistry or the bead itself, and only with the letter.
_is_meant(bead, text) if {
	asked := data.contact.judging.asked
	regex.match(asked.only_with, text)
	not regex.match(asked.not_it, text)
	_is_named_or_kind(bead, text)
}

_is_named_or_kind(bead, text) if _is_named(bead, text)

_is_named_or_kind(bead, text) if {
	some key, words_for in data.contact.judging.asked.chemistries
	key in bead.keys
	regex.match(words_for, text)
}

_is_named(bead, text) if lower(bead.text) in regex.split(`[^\w-]+`, text)

# touch words the contact of two named sides: "A is in contact with B, with no separator shown".
touch(contact, one, other) := sprintf("%s is in contact with %s%s", [one, other, _between(contact)])

_question(v) := sprintf("%s on %s: see that the letter or report the row tells of names both", _names(v)) if {
	hush.has_proof(v.contact)
} else := sprintf("%s near %s: %s between them stops this only in part, ask both makers", array.concat(
	_names(v),
	[v.contact.separator.text],
)) if {
	v.contact.kind == "separated"
} else := sprintf("%s meets %s: ask both makers in writing (%s)", array.concat(_names(v), [why(v.row)]))

# why words the condition of a row; one that only points at another row gives its mechanism.
why(row) := replace(row.mechanism, "-", " ") if {
	regex.match(data.contact.judging.pointing, row.condition)
} else := naming.uncapped(trim_suffix(row.condition, "."))

_names(v) := [naming.plain(v.contact.a), naming.plain(v.contact.b)]

_finding(v, message) := finding.at_with(
	facts.lines_by_id[v.contact.line],
	_cells(v.contact),
	concat("", [message, _barred(v.contact), _again(v.also)]),
	object.union(
		{
			"severity": v.severity,
			"related": array.concat(_others(v.contact), array.concat(_data(v.contact), _also(v))),
			"facts": [v.contact.id],
		},
		_of_row(v.row),
	),
)

# ends gives the side that has one of the keys first: ends(contact, ["epdm"]) is {"one": the EPDM, "other": the rest}.
ends(contact, keys) := {"one": contact.a, "other": contact.b} if {
	facts.has_key(contact.a, keys)
	not facts.has_key(contact.b, keys)
} else := {"one": contact.b, "other": contact.a} if {
	facts.has_key(contact.b, keys)
} else := {"one": contact.a, "other": contact.b}

_between(contact) := sprintf("; %s between them does not stop that", [contact.separator.text]) if {
	contact.kind == "separated"
	contact.separator.text != ""
} else := ", with no separator shown"

_cells(contact) := {at.cell |
	some at in [contact.a.at, contact.b.at, contact.at]
	_same_row(at, facts.lines_by_id[contact.line])
	at.cell != ""
}

_same_row(at, line) if {
	at.sheet == line.sheet
	at.row == line.row
}

# A material that stands in another row is named beside the finding.
_others(contact) := [finding.related(line, {end.at.cell}, sprintf("%s stands here", [end.text])) |
	some end in [contact.a, contact.b]
	end.line != contact.line
	line := facts.lines_by_id[end.line]
]

_data(contact) := [finding.related_product(s.by, ["keep_off"], sprintf("its data: keep off %s", [s.target.text])) |
	some s in product_says.bars(contact)
]

# At most five of the other rows; the message says how many there are.
_also(v) := [finding.related(line, _cells(w.contact), "the same pair") |
	some w in array.slice(v.also, 0, 5)
	line := facts.lines_by_id[w.contact.line]
]

_barred(contact) := sprintf("; the data of %s says to keep off %s", [bar.by.id, words.quoted(bar.target.text)]) if {
	bar := product_says.bars(contact)[0]
} else := ""

_again(also) := sprintf(" (and in %s)", [words.counted(count(also), "more row", "more rows")]) if {
	count(also) > 0
} else := ""

_of_row(row) := {} if {
	row == {}
} else := {"remedy": row.remedy, "source": source(row)}

# source writes where a row of the table comes from, with its mark.
source(row) := sprintf("%s (%s)", [row.source.ref, row.basis]) if {
	not row.basis in {"from-memory", "common-practice"}
} else := replace(row.basis, "-", " ")
