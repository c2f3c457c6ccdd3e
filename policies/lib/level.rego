# METADATA
# title: How loud a judgement is
# description: |
#   The severity that a row of the table earns. An incompatible pair has the row's own severity; a pair that the
#   makers must confirm is a note, since a question is no defect; a weak row says nothing.
package lib.level

import data.lib.facts
import data.lib.parting

# of is error, warning, note or none.
of(contact, found) := "none" if {
	data.contact.judging.badness[found.row.verdict] < 2
} else := "none" if {
	_is_quiet(found.row)
} else := "none" if {
	_needs_no_bond(contact, found.row)
} else := "none" if {
	found.row.confidence < data.contact.judging.ask
} else := "none" if {
	_is_slight(found.row)
} else := "note" if {
	_is_doubtful(contact, found)
} else := found.row.severity if {
	found.row.verdict == "incompatible"
} else := "warning" if {
	found.row.severity == "error"
} else := "warning" if {
	is_lapse(contact, found.row)
} else := "warning" if {
	_has_no_letter(contact)
} else := "note"

# is_lapse holds where the row says itself that it left out what would answer the question.
is_lapse(contact, row) if {
	contact.kind == "direct"
	some lapse in data.contact.judging.lapses
	row.mechanism in lapse.mechanisms
	_is_of_classes(contact, lapse.classes)
	_is_of_keys(contact, object.get(lapse, "keys", []))
	some signal in lapse.signals
	_says(contact, lapse, signal)
}

# It says itself that it has no letter for the bead that it lays straight on a sheet.
_has_no_letter(contact) if {
	contact.kind == "direct"
	some [bead, sheet] in [[contact.a, contact.b], [contact.b, contact.a]]
	bead.class in data.contact.judging.no_letter.beads
	sheet.class in data.contact.judging.no_letter.sheets
	some signal in data.contact.judging.no_letter.signals
	facts.denied(facts.lines_by_id[contact.line], signal)
}

_is_of_classes(_, classes) if count(classes) == 0

_is_of_classes(contact, classes) if contact.a.class in classes

_is_of_classes(contact, classes) if contact.b.class in classes

_is_of_keys(_, keys) if count(keys) == 0

_is_of_keys(contact, keys) if {
	some end in [contact.a, contact.b]
	some key in keys
	key in end.keys
}

_says(contact, lapse, signal) if {
	not lapse.own_cell
	_tells(contact, signal)
}

# What one of the two lacks is told in its own cell: a bare block behind it is another thing.
_says(contact, lapse, signal) if {
	lapse.own_cell
	some end in [contact.a, contact.b]
	end.class in lapse.classes
	some said in facts.lines_by_id[contact.line].signals
	said.id == signal
	not said.no
	said.at.cell == end.at.cell
}

_tells(contact, signal) if signal in contact.signals

_tells(contact, signal) if facts.said(facts.lines_by_id[contact.line], signal)

# Which of two beads went on first is seldom told, so a row that turns on it is a question.
_is_doubtful(_, found) if found.ordered

_is_doubtful(_, found) if found.row.confidence < data.contact.judging.sure

_is_doubtful(contact, found) if parting.extent(contact, found.row) == "partly"

_is_doubtful(contact, found) if {
	found.row.mechanism == "adhesion-failure"
	{found.row.a, found.row.b} & {k | some k in data.contact.judging.adhesive_keys} != set()
	some end in [contact.a, contact.b]
	_is_bead(end)
}

# A strip may be set in its own sealant over the face of a sheet, which then needs no hold on it.
_is_doubtful(contact, found) if {
	found.row.mechanism == "adhesion-failure"
	{found.row.a, found.row.b} & {k | some k in data.contact.judging.strip_keys} != set()
	some strip in [contact.a, contact.b]
	strip.family in data.contact.judging.strip_families
	not _lies_under(strip, contact)
}

# The row says that the other of the two is stuck onto this one.
_lies_under(end, contact) if {
	over := contact[object.get(contact, "upper", "")]
	over != end
}

# Or the strip is what the row's sheet is stuck on.
_lies_under(end, _) if end.slot == "substrate"

_is_doubtful(_, found) if _is_listed(data.contact.judging.disputed_pairs, found.row)

_is_bead(end) if end.class in data.contact.judging.bead_classes

_needs_no_bond(contact, row) if {
	row.verdict != "incompatible"
	row.mechanism == "adhesion-failure"
	some end in [contact.a, contact.b]
	end.class in data.contact.judging.no_bond_classes
}

_needs_no_bond(contact, row) if {
	row.verdict != "incompatible"
	row.mechanism == "adhesion-failure"
	some [loose, other] in [[contact.a, contact.b], [contact.b, contact.a]]
	loose.family in data.contact.judging.no_bond_families
	loose.slot != "substrate"
	not other.class in {"sealant", "tape", "mastic", "adhesive"}
}

_needs_no_bond(contact, row) if {
	row.mechanism == "adhesion-failure"
	some key in data.contact.judging.alike_keys
	key in contact.a.keys
	key in contact.b.keys
}

# What the table itself holds for worth knowing only is no question.
_is_slight(row) if {
	row.verdict == "needs-confirmation"
	row.severity == "note"
}

_is_quiet(row) if {
	row.verdict != "incompatible"
	row.mechanism in data.contact.judging.quiet_mechanisms
}

_is_quiet(row) if _is_listed(data.contact.judging.quiet_pairs, row)

_is_listed(pairs, row) if {
	some pair in pairs
	{row.a, row.b} == {pair[0], pair[1]}
}
