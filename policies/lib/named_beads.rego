# METADATA
# title: Beads that notes name
# description: |
#   The notes say by their tags which beads a kind of sheet takes, or takes not: "asphaltic sheets: SE-3 only", "no SE-1
#   on asphaltic sheets"; or which a sheet takes that they name by its own tag: "sealants: SE-3 at FM-1 and FM-2"; or
#   that a sheet takes only those that its data lists. The data of a sheet may say so of itself: "SE-3 only".
package lib.named_beads

import data.lib.facts

# note is the sentence of the notes by which the bead of a contact may not lie on its sheet; undefined without one.
note(contact) := found if {
	contact.kind == "direct"
	contact.from in data.contact.judging.letters.from
	found := [one |
		some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
		bead.class in data.contact.judging.letters.beads
		sheet.class in data.contact.settled.sheet.classes
		some one in _sentences
		one.kind in sheet.keys
		_bars(one, lower(bead.product))
	][0]
} else := found if {
	contact.kind == "direct"
	contact.from in data.contact.judging.letters.from
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.product != ""
	bead.class in data.contact.judging.letters.beads
	sheet.class in data.contact.settled.sheet.classes
	_lists_beads(facts.product_of(sheet))
	found := _listed_only[0]
} else := found if {
	contact.kind == "direct"
	_is_of_edge(contact)
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.class in data.contact.judging.letters.beads
	lower(bead.product) in _beads
	sheet.class in data.contact.settled.sheet.classes
	named := [one | some one in _tagged; lower(sheet.product) in one.sheets]
	count([one | some one in named; lower(bead.product) in one.beads]) == 0
	found := named[0]
} else := found if {
	contact.kind == "direct"
	contact.from in data.contact.judging.letters.from
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.product != ""
	bead.class in data.contact.judging.letters.beads
	sheet.class in data.contact.settled.sheet.classes
	found := [one | some one in _sole; _is_meant(one, sheet); not lower(bead.product) in one.beads][0]
} else := found if {
	contact.kind == "direct"
	_is_of_edge(contact)
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.product != ""
	bead.class in data.contact.judging.letters.beads
	product := facts.product_of(sheet)
	not _takes(product, bead)
	found := [one | some one in _own_only(product); not lower(bead.product) in one.beads][0]
}

_takes(product, bead) if {
	some target in product.suits
	bead.product in target.products
}

# _own_only are the parts of a product's data that name the only beads for it.
_own_only(product) := [one |
	some slot in data.contact.judging.named_beads.own_slots
	some text in regex.split(`[.;]\s+|[.;]$`, product.texts[slot])
	said := lower(trim_space(text))
	not regex.match(data.contact.judging.named_beads.unless, said)
	some like in data.contact.judging.named_beads.own
	whole := replace(like, "TAGS", data.contact.judging.named_beads.tags)
	some found in regex.find_all_string_submatch_n(whole, said, 1)
	beads := _tags_in(found[1]) & _beads
	count(beads) > 0
	one := {
		"beads": beads,
		"text": trim_space(text),
		"at": {"sheet": product.sheet, "row": product.row, "cell": product.cells[slot]},
		"by": sprintf("the data of %s says", [product.id]),
		"severity": "error",
	}
]

# _sole lists sentences that name the only beads for sheets: {"beads", "letters" that the tags of the sheets begin with,
# none for all, "text", "at"}. What speaks of a kind of sheet is read by that.
_sole := [one |
	some note in object.get(input.project, "notes", [])
	some text in regex.split(`[.;]\s+|[.;]$`, note.text)
	said := lower(text)
	not regex.match(data.contact.judging.named_beads.unless, said)
	whole := replace(data.contact.judging.named_beads.sole, "TAGS", data.contact.judging.named_beads.tags)
	some found in regex.find_all_string_submatch_n(whole, said, 1)
	not _names_kind(found[2])
	one := {
		"beads": _tags_in(found[1]) & _beads,
		"letters": {word | some word in regex.find_n(`[a-z]+`, found[2], -1); not word in {"or", "and"}},
		"text": trim_space(text),
		"at": note.at,
	}
	count(one.beads) > 0
]

_names_kind(text) if {
	some words in data.contact.judging.asked.sheets
	regex.match(words, text)
}

_is_meant(one, _) if count(one.letters) == 0

_is_meant(one, sheet) if {
	some word in one.letters
	startswith(lower(sheet.product), word)
}

_is_of_edge(contact) if contact.from in data.contact.judging.letters.from

# A remark tells of a bead where it says that one seals the edge.
_is_of_edge(contact) if {
	contact.from == "remark"
	"edge_sealed" in contact.signals
}

# _tagged lists what notes say of sheets by their tags: {"sheets", "beads", "text", "at"}.
_tagged := [one |
	some note in object.get(input.project, "notes", [])
	some text in regex.split(`[.;]\s+|[.;]$`, note.text)
	said := lower(text)
	not regex.match(data.contact.judging.named_beads.unless, said)
	some pattern in data.contact.judging.named_beads.by_tag
	_holds(pattern, note, said)
	whole := replace(pattern.like, "TAGS", data.contact.judging.named_beads.tags)
	some found in regex.find_all_string_submatch_n(whole, said, 1)
	one := {
		"sheets": _tags_in(found[pattern.sheets]) - _beads,
		"beads": _tags_in(found[pattern.beads]) & _beads,
		"text": trim_space(text),
		"at": note.at,
	}
	count(one.beads) > 0
]

_holds(pattern, _, _) if not pattern.headed

_holds(pattern, note, said) if {
	pattern.headed
	regex.match(data.contact.judging.named_beads.head, lower(note.text))
	not regex.match(`\bonly\b`, said)
}

_tags_in(text) := {tag | some tag in regex.find_n(`[a-z]{1,4}-?\d{1,3}[a-z]?`, text, -1)}

# _listed_only are sentences of notes that let only those beads meet a sheet that its data names.
_listed_only := [{"text": trim_space(text), "at": note.at} |
	some note in object.get(input.project, "notes", [])
	some text in regex.split(`[.;]\s+|[.;]$`, note.text)
	said := lower(text)
	not regex.match(data.contact.judging.named_beads.unless, said)
	some like in data.contact.judging.named_beads.listed
	regex.match(like, said)
]

# The data of the sheet has a list of beads; whether this one is on it, the data of the contact has told before.
_lists_beads(product) if {
	some target in object.get(product, "suits", [])
	some id in target.products
	lower(id) in _beads
}

_bars(one, bead) if bead in one.never

_bars(one, bead) if {
	bead != ""
	count(one.only) > 0
	not bead in one.only
}

# _sentences lists what notes say: {"kind" of sheet, "only": tags, "never": tags, "text", "at"}.
_sentences := [one |
	some note in object.get(input.project, "notes", [])
	some text in regex.split(`[.;]\s+|[.;]$`, note.text)
	said := lower(text)
	not regex.match(data.contact.judging.named_beads.unless, said)
	some kind, words in data.contact.judging.asked.sheets
	one := {
		"kind": kind,
		"only": _tags(said, data.contact.judging.named_beads.only, words),
		"never": _tags(said, data.contact.judging.named_beads.never, words),
		"text": trim_space(text),
		"at": note.at,
	}
	count(one.only) + count(one.never) > 0
]

# _tags are the beads that one of the patterns finds in a sentence: tags of primers and sheets are no beads.
_tags(said, patterns, words) := {tag |
	some pattern in patterns
	whole := replace(replace(pattern, "KIND", words), "TAGS", data.contact.judging.named_beads.tags)
	some found in regex.find_all_string_submatch_n(whole, said, 1)
	some tag in _tags_in(found[1])
	tag in _beads
}

_beads := {lower(product.id) |
	some product in object.get(input, "products", [])
	product.class in data.contact.judging.letters.beads
}
