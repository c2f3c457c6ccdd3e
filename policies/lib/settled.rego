# METADATA
# title: Settled pairs
# description: |
#   The five neighbors that no asphaltic sheet bears: plasticized PVC, EPDM, coal tar, creosote, solvent-borne
#   sealant.
package lib.settled

import data.lib.facts
import data.lib.parting

# pair is the settled pair that a contact is, undefined if it is none: {"rule", "mechanism", ...} with the sheet.
pair(contact) := found if {
	contact.kind in {"direct", "separated"}
	found := [object.union(one, {"sheet": ends[0]}) |
		some ends in [[contact.a, contact.b], [contact.b, contact.a]]
		_is_sheet(ends[0])
		some one in data.contact.settled.against
		_is_foe(one, ends[1])
		not ends[0].family in one.not_sheets
	][0]
}

# extent is how far the contact's separator keeps the pair apart.
extent(contact) := parting.stops(contact, pair(contact).mechanism)

_is_sheet(end) if {
	facts.has_key(end, data.contact.settled.sheet.keys)
	_is_of_class(end)
	not end.family in data.contact.settled.sheet.not_families
}

_is_of_class(end) if end.class in data.contact.settled.sheet.classes

# Data that tells the stuff and not the form has no class.
_is_of_class(end) if {
	end.class == ""
	facts.lines_by_id[end.line].role in data.pairing.chemistry.roles
	end.slot in {"material", "tag"}
}

_is_foe(one, end) if {
	facts.has_key(end, one.keys)
	not end.family in one.not_families
	_class_fits(one, end)
}

_class_fits(one, _) if count(one.classes) == 0

_class_fits(one, end) if end.class in one.classes
