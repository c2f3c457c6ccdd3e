# METADATA
# title: How the edge of a sheet is closed
# description: |
#   What a row says of the edge of its sheet: left open, sealed, lapped the wrong way. Words of closing count in the
#   cell in which the trouble is told, since a bead in the sealant column may belong to another joint.
package lib.closing

import data.lib.facts
import data.lib.limits

# told lists the words of a row for a signal that nothing in the row takes back.
told(line, id) := [s | some s in line.signals; s.id == id; not s.no] if facts.said(line, id)

# is_closed_in: the cell also tells of a bar, a bead or a lap from above.
is_closed_in(line, slot) if {
	some id in data.sequence.edge.sealing
	facts.said_in(line, slot, id)
}

# is_closed: any cell of the row does.
is_closed(line) if {
	some id in data.sequence.edge.sealing
	facts.said(line, id)
}

# reversed lists the words of a row for a lap against the water, unless its cell tells that it is barred and sealed.
reversed(line) := [s |
	some s in told(line, "lap_reversed")
	not _is_made_good(line, s)
]

default reversed(_) := []

# An open edge in the same row undoes what is told of a seal; "lapped over" in "lower course lapped over the upper" is
# the very lap in question, and a bar at the top of a head strip closes no lap between head and jamb, unless the same
# words tell of it.
_is_made_good(line, reversal) if {
	some id in data.sequence.edge.sealing
	some s in told(line, id)
	s.slot == reversal.slot
	not contains(reversal.text, s.text)
	not lower(s.text) in data.sequence.edge.hem
	not facts.said(line, "edge_open")
	not _is_elsewhere(line, reversal)
	not _is_same_lap(line, reversal, s)
	not _ends_upper(line, reversal, s)
}

# "Upper course stops at the bar, the lower laps over its bottom edge": the bar is where the upper one ends, and closes
# no head of the lower.
_ends_upper(line, reversal, s) if {
	pieces := regex.split(`[,;.]`, lower(object.get(line.texts, reversal.slot, "")))
	told := [piece | some piece in pieces; contains(piece, lower(s.text))]
	count(told) > 0
	every piece in told { regex.match(data.sequence.edge.upper_ends, piece) }
}

# "behind the leg and over its top edge": what lies behind it comes over it too.
_is_made_good(line, reversal) if {
	regex.match(data.sequence.edge.capped, lower(object.get(line.texts, reversal.slot, "")))
	not facts.said(line, "edge_open")
}

# "The sheet behind the base flashing, the base flashing laps over it": what laps over is the very piece below that the
# sheet should lap. A counterflashing or coping that does so lies above.
_is_same_lap(line, reversal, s) if {
	some under in line.items
	under.slot == reversal.slot
	under.side == "object"
	"lap_reversed" in under.signals
	some over in line.items
	over.slot == reversal.slot
	over.side == "subject"
	contains(over.clause, s.text)
	endswith(lower(under.text), lower(over.text))
	regex.match(data.sequence.edge.lower, lower(over.text))
}

_is_elsewhere(line, reversal) if {
	count(_parts(reversal.text)) > 1
	some piece in regex.split(data.sequence.openings.lap_parting, object.get(line.texts, reversal.slot, ""))
	contains(piece, reversal.text)
	every s in line.signals { not _closes_within(s, piece, reversal) }
}

_closes_within(s, piece, reversal) if {
	s.id in data.sequence.edge.sealing
	contains(piece, s.text)
	not contains(reversal.text, s.text)
}

# _parts are the parts of an opening that words name.
_parts(text) := {part |
	some part, names in data.sequence.openings.parts
	some word in regex.split(`[^a-z]+`, lower(text))
	count(word) > 1
	word in names
}

# open lists the words of a row for an edge left open.
open(line) := [s |
	some s in told(line, "edge_open")
	not is_closed_in(line, s.slot)
	not _comes_over(line, s)
	not _is_barred(line, s)
]

default open(_) := []

# "The wall sheet (left loose there) over it": what is loose is the sheet above, which comes down over the edge.
_comes_over(line, s) if {
	text := lower(object.get(line.texts, s.slot, ""))
	some found in regex.find_n(data.sequence.edge.comes_over, text, -1)
	contains(found, lower(s.text))
}

# "Term bar, no mastic": a bar presses the edge on by itself, where no note asks for a bead with it.
_is_barred(line, s) if {
	barred := data.sequence.edge.barred
	regex.match(barred.beadless, lower(s.text))
	some other in line.signals
	other.id in data.sequence.edge.sealing
	other.slot == s.slot
	not other.no
	regex.match(barred.bar, lower(other.text))
	not _asks_both(line)
}

_asks_both(line) if regex.match(data.sequence.edge.barred.both, lower(rule(line).text))

# rule is the note of the project that asks for every edge to be closed; undefined without.
rule(line) := [l |
	some item in facts.main_items(line)
	some l in limits.limits_for("termination", line, item.keys, line.role)
][0]

# cell is the edge cell in small letters; undefined without an edge column.
cell(line) := lower(trim_space(line.texts.edge))
