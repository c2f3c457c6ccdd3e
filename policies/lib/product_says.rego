# METADATA
# title: What product data says of a contact
# description: |
#   The workbook's own data beats the usual judgement. Data that names the other product is heard before data that
#   names its kind; an exception ("EPDM OK") before the list that it stands in, and not before what the other side's
#   data says; at the same rank a "keep off" is heard.
package lib.product_says

import data.lib.facts
import data.lib.target

# heard is what counts: {"word": "bars" or "allows", "rank", "by": product, "target", "self", "other"}.
heard(contact) := said if {
	all := statements(contact)
	key := max([_weight(s) | some s in all])
	said := [s | some s in all; _weight(s) == key][0]
}

# statements lists all that the data of either side says of the other, less what its own exceptions lift.
statements(contact) := array.concat(
	_of(contact, contact.a, contact.b),
	_of(contact, contact.b, contact.a),
)

# bars lists the statements by which either side's data keeps the other off.
bars(contact) := [s | some s in statements(contact); s.word == "bars"]

_of(contact, self, other) := [s | some s in all; not _is_left_out(s, all, contact)] if {
	all := _said(self, other)
}

_is_left_out(s, all, _) if _is_lifted(s, all)

_is_left_out(s, _, contact) if _is_other_order(s, contact)

_is_left_out(s, _, contact) if _is_primed(s, contact)

# A primer of the row that is for the film holds what would not hold on it.
_is_primed(s, contact) if {
	s.word == "bars"
	target.is_face(s.target)
	some primer in facts.items_in(facts.lines_by_id[contact.line], ["primer"])
	facts.is_there(primer)
	product := facts.product_of(primer)
	some face in array.concat(product.accepts, product.suits)
	target.means(face, s.other)
}

# "Never over PVC" bars only what lies so.
_is_other_order(s, contact) if {
	side := {"over": s.self, "under": s.other}[s.target.lies]
	object.get(contact, object.get(contact, "upper", ""), {}) != side
}

_is_lifted(s, all) if {
	s.rank == 1
	not s.target.except
	some exception in all
	exception.target.except
}

_said(self, other) := array.concat(_by_data(self, other), _by_letter(self, other))

# A letter that the notes tell of names both.
_by_letter(self, other) := [{
	"word": "allows",
	"rank": _rank(found, other),
	"by": facts.product_of(self),
	"target": object.union(found, {"letter": letter.text}),
	"self": self,
	"other": other,
} |
	some letter in object.get(input.project, "letters", [])
	self.product in letter.products
	some found in letter.with
]

_by_data(self, other) := [s |
	product := facts.product_of(self)
	some list in [
		{"targets": product.keep_off, "word": "bars", "against": "allows"},
		{"targets": product.suits, "word": "allows", "against": "bars"},
		{"targets": _beds(product), "word": "allows", "against": "bars"},
		{"targets": _primers(product), "word": "allows", "against": "bars"},
	]
	some found in list.targets
	s := {
		"word": _word(list, found),
		"rank": _rank(found, other),
		"by": product,
		"target": found,
		"self": self,
		"other": other,
	}
]

# A bed that the list bars is told where the sheet goes on it.
_beds(product) := [a | some a in product.accepts; not a.except]

_primers(product) := [{"text": a.text, "keys": [], "products": a.primers, "except": false} | some a in product.accepts]

_word(list, found) := list.word if not found.except

_word(list, found) := list.against if found.except

_rank(found, other) := 2 if {
	target.names(found, other)
} else := 1 if {
	target.covers(found, other)
}

_weight(s) := [s.rank, _loud[s.word], s.by.id, s.target.text]

_loud := {"bars": 1, "allows": 0}
