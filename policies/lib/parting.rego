# METADATA
# title: Separators
# description: |
#   What a stated separator stops. A film stops plasticizer and lets solvent through; fleece stops sticking and
#   nothing else. One whose kind is not known is believed, except that nothing laid between two metals stops what
#   rain carries.
package lib.parting

import data.lib.facts

# stops says how far the separator of a contact stops a mechanism: whole, partly or none.
stops(contact, mechanism) := extent(contact, {"mechanism": mechanism})

# extent is the same for a row of the table, which may name separators of its own.
extent(contact, row) := "none" if {
	contact.kind != "separated"
} else := "whole" if {
	_is_side(contact)
} else := "whole" if {
	not kind(contact.separator)
} else := "whole" if {
	_is_asked_for(contact)
} else := "whole" if {
	kind(contact.separator) in row.separators_that_work
} else := "none" if {
	kind(contact.separator) in row.separators_that_do_not
} else := "none" if {
	_acts(row.mechanism) in known[kind(contact.separator)].does_not_stop
} else := "partly" if {
	_acts(row.mechanism) in known[kind(contact.separator)].partly
} else := "whole"

# One of the two sides cannot part them: what does was not read, and is believed.
_is_side(contact) if {
	contact.separator.product != ""
	contact.separator.product in {contact.a.product, contact.b.product}
}

# The data of a side names what parts it from what it keeps off: "asphalt; FL-1 between".
_is_asked_for(contact) if {
	contact.separator.product != ""
	some end in [contact.a, contact.b]
	some word in regex.split(`[^\p{L}\d./-]+`, object.get(facts.product_of(end).texts, "keep_off", ""))
	upper(trim(word, ".")) == upper(contact.separator.product)
}

# kind is the separator it is taken for: by its family, else by what it is made of.
kind(separator) := separator.family if {
	known[separator.family]
} else := [stand.separator |
	some stand in data.contact.stand_ins
	some key in stand.keys
	key in separator.keys
][0]

known := {separator.id: separator | some separator in data.knowledge.separators}

# Swelling is oil or solvent on its way, cracking is solvent or plasticizer.
_acts(mechanism) := object.get(data.contact.acts_as, mechanism, mechanism)
