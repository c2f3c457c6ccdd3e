# METADATA
# title: Facts
# description: |
#   Look-ups over the document that several rules share, each built once. A struck row is dead: use live_lines and
#   live_contacts, never input.lines and input.contacts, where a row is judged.
package lib.facts

# lines_by_id, products_by_id and windows_by_line hold one value a key.
lines_by_id := {line.id: line | some line in input.lines}

products_by_id := {product.id: product | some product in input.products}

windows_by_line := {window.line: window | some window in input.windows}

# contacts_by_line holds the list of live contacts that a line tells.
contacts_by_line := {id: contacts |
	some line in input.lines
	id := line.id
	contacts := [contact | some contact in live_contacts; contact.line == id]
}

live_lines := [line | some line in input.lines; not line.struck]

# Most schedules have no struck row, and then every contact is live.
live_contacts := input.contacts if {
	count(live_lines) == count(input.lines)
} else := [contact |
	some contact in input.contacts
	is_live(contact.line)
	is_live(contact.a.line)
	is_live(contact.b.line)
]

live_windows := [window | some window in input.windows; is_live(window.line)]

# is_live says that no struck line has this id; "" (no line) is live.
is_live(id) if not lines_by_id[id].struck

# contacts_of lists the live contacts that the line tells.
contacts_of(line) := object.get(contacts_by_line, line.id, [])

# product_of is the product data of an item, a contact end, a check or a layer; undefined without any.
product_of(item) := products_by_id[item.product]

# items_in lists the items of a line that stand in one of the slots and are said to be there.
items_in(line, slots) := [item |
	some item in line.items
	item.slot in slots
	is_there(item)
]

# main_items are the line's own materials: the products of its tags where it has any, since the words beside a tag
# only tell what it is for ("air barrier sheet | AB-1").
main_items(line) := tagged if {
	tagged := [item | some item in items_in(line, ["material", "tag"]); item.product != ""]
	count(tagged) > 0
} else := items_in(line, ["material", "tag"])

# is_there: the words say that the material is there ("no primer" and "if needed" are not).
is_there(item) if item.polarity == "yes"

# has_key: the item, end or product has one of the families or traits.
has_key(item, keys) if {
	some key in item.keys
	key in keys
}

# figure_of is the figure of the line itself, else of the product of its own material; undefined without both.
figure_of(line, kind) := line.figures[kind]

figure_of(line, kind) := figure if {
	not line.figures[kind]
	figures := [f | some item in main_items(line); f := product_of(item).figures[kind]]
	figure := figures[0]
}

# said: the words of the line tell the signal, and none of them denies it.
said(line, id) if {
	_told(line.signals, id)
	not denied(line, id)
}

# denied: the words of the line deny the signal ("not heated").
denied(line, id) if _untold(line.signals, id)

# said_in: as said, for the words of one slot.
said_in(line, slot, id) if {
	signals := [signal | some signal in line.signals; signal.slot == slot]
	_told(signals, id)
	not _untold(signals, id)
}

# project_said: the notes tell the signal for the whole job, and none of them denies it.
project_said(id) if {
	_told(input.project.signals, id)
	not project_denied(id)
}

project_denied(id) if _untold(input.project.signals, id)

# said_here: the line tells it, or the project does and the line does not deny it.
said_here(line, id) if said(line, id)

said_here(line, id) if {
	project_said(id)
	not denied(line, id)
}

_told(signals, id) if {
	some signal in signals
	signal.id == id
	not signal.no
}

_untold(signals, id) if {
	some signal in signals
	signal.id == id
	signal.no
}
