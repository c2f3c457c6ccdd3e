# METADATA
# title: When a contact is no contact
# description: |
#   Words and places that end the question before chemistry is asked: said to be apart, a gap, a metal joint away from
#   the sheet, a part inside a pocket; and couples that the pairing topic judges.
package lib.hush

import data.lib.facts
import data.lib.rows

# why is the reason for which nothing is asked of a contact; undefined where the question stands.
why(contact) := "they are said not to touch" if {
	contact.kind == "apart"
} else := "there is a gap between them" if {
	contact.kind == "near"
	contact.clear_mm > 0
} else := hushed[0] if {
	hushed := [word.why |
		some word in data.contact.judging.hush
		word.signal in contact.signals
		not _spared(contact, word)
	]
	count(hushed) > 0
} else := "the row says elsewhere that they are apart" if {
	contact.kind == "direct"
	_key(contact) in _apart_keys
} else := "the sealant joins metal to metal, away from the sheet" if {
	"metal_to_metal" in contact.signals
	_bead_off_metal(contact)
} else := "the primer is judged with its sheet and its substrate" if {
	_primes(contact)
} else := "the residue is judged with its substrate" if {
	_residue_below(contact)
}

# has_proof: the words of the contact or of its row say that a letter for the pair is at hand.
has_proof(contact) if {
	some signal in data.contact.judging.evidence.signals
	signal in contact.signals
}

has_proof(contact) if {
	some signal in data.contact.judging.evidence.signals
	facts.said(facts.lines_by_id[contact.line], signal)
}

# telling_rows holds the lines of which another cell may change what is asked of a contact.
telling_rows := ({contact.line | some contact in _apart} | _primed_rows) | {line.id |
	some line in facts.live_lines
	some signal in line.signals
	_tells(line, signal.id)
}

_tells(line, id) if {
	id in _proofs_and_lapses
	facts.said(line, id)
}

# A row that says itself that it has no letter.
_tells(line, id) if {
	id in data.contact.judging.no_letter.signals
	facts.denied(line, id)
}

_proofs_and_lapses := {id | some id in data.contact.judging.evidence.signals} | {id |
	some lapse in data.contact.judging.lapses
	some id in lapse.signals
}

# What primes a bead may let it hold where it would not.
_primed_rows := {line.id |
	some line in facts.live_lines
	line.role in {"sealant", "adhesive", "coating"}
	some primer in facts.items_in(line, ["primer"])
	primer.product != ""
}

# A column sets two materials side by side, and a remark of the row says that they are clear of one another.
_apart_keys := {_key(contact) | some contact in _apart}

_apart := array.concat(
	[contact | some contact in facts.live_contacts; contact.kind == "apart"],
	[contact | some contact in facts.live_contacts; contact.kind == "near"; contact.clear_mm > 0],
)

_key(contact) := concat("|", array.concat([contact.line], sort([_who(contact.a), _who(contact.b)])))

_who(end) := end.product if {
	end.product != ""
} else := end.family if {
	end.family != ""
} else := end.text

# Aluminum in wet mortar is embedded, and that is the harm.
_spared(contact, word) if {
	facts.has_key(contact.a, word.unless_keys)
} else if {
	facts.has_key(contact.b, word.unless_keys)
} else if {
	some x in contact.a.keys
	some y in contact.b.keys
	some row in rows.between(x, y, "contact")
	row.mechanism in word.unless_mechanisms
}

_bead_off_metal(contact) if {
	some [bead, other] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.class in {"sealant", "mastic"}
	not facts.has_key(other, ["metal"])
}

_primes(contact) if {
	contact.from == "primer"
	_has_sheet(contact)
	not _has_bead(contact)
}

_primes(contact) if {
	_has_sheet(contact)
	some [primer, other] in [[contact.a, contact.b], [contact.b, contact.a]]
	primer.class == "primer"
	other.slot in {"material", "substrate"}
}

# A sealant that the primer cell names is a bead at the sheet, and no primer: "PR-2; edge run with S-3".
_has_bead(contact) if {
	some end in [contact.a, contact.b]
	end.slot == "primer"
	end.class in {"sealant", "mastic"}
}

_residue_below(contact) if {
	_has_sheet(contact)
	some [below, above] in [[contact.a, contact.b], [contact.b, contact.a]]
	below.slot == "substrate"
	above.slot == "material"
	facts.has_key(below, ["oil-or-wax-residue"])
}

_residue_below(contact) if {
	_has_sheet(contact)
	"left_on" in contact.signals
	some end in [contact.a, contact.b]
	end.slot == "substrate"
	end.class == "sealant"
	facts.has_key(end, ["silicone"])
}

# "Cured silicone bead" as the bed of a sheet is told there too.
_residue_below(contact) if {
	_has_sheet(contact)
	contact.from == "substrate"
	some end in [contact.a, contact.b]
	end.slot == "substrate"
	facts.has_key(end, ["silicone"])
	some found in data.pairing.old_silicone.findings
	found.line == contact.line
	end.item in found.facts
}

# The pairing topic judges the rows of sheets only.
_has_sheet(contact) if facts.lines_by_id[contact.line].role in data.pairing.chemistry.roles
