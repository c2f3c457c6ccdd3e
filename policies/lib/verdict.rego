# METADATA
# title: Judgement of a contact
# description: |
#   Resolves every contact to one judgement: fine, ask (a question to the makers) or harm. Heard in this order: words
#   that part the two, product data that allows it, the five settled pairs, a harm in the table of pairs, product data
#   that bars it, the rest of the table. What has no row is unknown, and nothing is said of it.
package lib.verdict

import data.lib.facts
import data.lib.hush
import data.lib.level
import data.lib.named_beads
import data.lib.parting
import data.lib.product_says
import data.lib.rows
import data.lib.settled

# judged holds one judgement for every live contact of a known pair: {"contact", "outcome", "rule", "severity",
# "mechanism", "row", "why"}; row is {} where product data or a settled pair decides.
judged := [v | some contact in facts.live_contacts; v := _heard(contact)]

# told holds those of judged that are a harm or a question.
told := [v | some contact in facts.live_contacts; not _is_quiet(contact); v := _heard(contact); v.outcome != "fine"]

# fine holds the contacts that were judged and found good, with the reason.
fine := [{"contact": v.contact, "why": v.why} | some v in judged; v.outcome == "fine"]

# unknown holds the contacts that nothing is known of.
unknown := [contact | some contact in facts.live_contacts; is_unknown(contact)]

# is_unknown: nothing is known of the contact.
is_unknown(contact) if not _heard(contact)

# Contacts of one case are judged once, unless the rest of the row has a word in it.
_heard(contact) := judge(contact) if {
	not contact.case
} else := judge(contact) if {
	contact.line in hush.telling_rows
} else := object.union(_by_case[contact.case], {"contact": contact})

_by_case := {case: v |
	some case in {contact.case | some contact in _shared}
	alike := [contact | some contact in _shared; contact.case == case]
	v := {key: told | some key, told in judge(alike[0]); key != "contact"}
}

# Nothing is told of most cases.
_is_quiet(contact) if {
	contact.case
	not contact.case in _told_cases
	not contact.line in hush.telling_rows
}

_told_cases := {case | some case, v in _by_case; v.outcome != "fine"}

_shared := [contact | some contact in facts.live_contacts; contact.case; not contact.line in hush.telling_rows]

judge(contact) := _fine(contact, hush.why(contact)) if {
	hush.why(contact)
} else := _fine(contact, _allowed(said)) if {
	said := product_says.heard(contact)
	said.word == "allows"
	not _is_left_out(contact, said)
} else := _settled(contact) if {
	settled.pair(contact)
} else := v if {
	v := _by_rows(contact)
	v.outcome == "harm"
} else := v if {
	contact.kind == "direct"
	product_says.heard(contact).word == "bars"
	v := _verdict(contact, "keep_off", _eased(contact, "error"), {"row": {}, "mechanism": "", "why": ""})
} else := v if {
	note := named_beads.note(contact)
	severity := _eased(contact, object.get(note, "severity", "warning"))
	v := _verdict(contact, "bead_barred", severity, {"row": {}, "mechanism": "", "why": ""})
} else := v if {
	_is_unlettered(contact)
	v := _verdict(contact, "no_letter", _eased(contact, "warning"), {"row": {}, "mechanism": "", "why": ""})
} else := v if {
	_is_asked(contact)
	v := _verdict(contact, "letter_asked", "warning", {"row": {}, "mechanism": "", "why": ""})
} else := _by_rows(contact)

# Data that takes a bed, with its primer, answers for the bond; what the row says it did not try is open still.
_is_left_out(contact, said) if {
	not said.target.letter
	some one in rows.best(contact)
	level.is_lapse(contact, one.row)
}

_allowed(said) := "a letter on file names both" if said.target.letter

_allowed(said) := sprintf("the data of %s allows it", [said.by.id]) if not said.target.letter

# The notes let nothing meet without a letter, and their letters name this bead and this sheet, but not the two as one.
_is_unlettered(contact) if {
	contact.kind == "direct"
	contact.from in data.contact.judging.letters.from
	facts.project_said("letters_only")
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.class in data.contact.judging.letters.beads
	sheet.class in data.contact.settled.sheet.classes
	bead.product in _lettered
	sheet.product in _lettered_with
}

# A bead straight on a sheet that it is known to fail on more often than not, and no letter or test is told of.
_is_asked(contact) if {
	contact.kind == "direct"
	not hush.has_proof(contact)
	some pair in data.contact.judging.letter_asked.pairs
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.class in data.contact.judging.letter_asked.beads
	sheet.class in data.contact.judging.letter_asked.sheets
	pair.bead in bead.keys
	pair.sheet in sheet.keys
	_by_rows(contact).outcome == "ask"
}

_lettered := {id | some letter in object.get(input.project, "letters", []); some id in letter.products}

_lettered_with := {id |
	some letter in object.get(input.project, "letters", [])
	some found in letter.with
	some id in found.products
}

_settled(contact) := _fine(contact, _kept_apart(contact)) if settled.extent(contact) == "whole"

_settled(contact) := _verdict(contact, pair.rule, severity, {"row": {}, "mechanism": pair.mechanism, "why": ""}) if {
	extent := settled.extent(contact)
	extent != "whole"
	pair := settled.pair(contact)
	severity := _eased(contact, {"none": "error", "partly": "note"}[extent])
}

_by_rows(contact) := v if {
	best := rows.best(contact)
	count(best) > 0
	v := _of_best(contact, [c | some c in best; parting.extent(contact, c.row) != "whole"])
}

_of_best(contact, open) := _fine(contact, _kept_apart(contact)) if count(open) == 0

_of_best(contact, open) := v if {
	worst := rows.worst(open)
	v := _of_row(contact, worst.row, level.of(contact, worst))
}

_of_row(contact, row, "none") := object.union(_fine(contact, row.condition), {"row": row})

_of_row(contact, row, level) := _verdict(contact, _route(contact, row), _eased(contact, level), {
	"row": row,
	"mechanism": row.mechanism,
	"why": row.condition,
}) if {
	level != "none"
}

# _route is the rule that tells a harm or a question: the first whose keys and mechanisms fit.
_route(contact, row) := [r.rule |
	some r in data.contact.routes
	_fits(r.kinds, {contact.kind})
	_fits(r.mechanisms, {row.mechanism})
	_fits(r.keys, {k | some end in [contact.a, contact.b]; some k in end.keys})
][0]

_fits(wanted, _) if count(wanted) == 0

_fits(wanted, got) if {
	some one in wanted
	one in got
}

# A written proof for the pair turns a harm into a note.
_eased(contact, severity) := "note" if {
	hush.has_proof(contact)
} else := severity

_fine(contact, why) := {
	"contact": contact,
	"outcome": "fine",
	"rule": "",
	"severity": "",
	"mechanism": "",
	"row": {},
	"why": why,
}

_verdict(contact, rule, severity, more) := object.union(
	{"contact": contact, "outcome": _outcome[severity], "rule": rule, "severity": severity},
	more,
)

_outcome := {"error": "harm", "warning": "harm", "note": "ask"}

_kept_apart(contact) := sprintf("%s keeps them apart", [contact.separator.text]) if {
	contact.separator.text != ""
} else := "they are kept apart"
