# METADATA
# title: What is said of the face under a sheet
# description: |
#   Residues and states of a substrate, told in the row, or on the sheet of the concrete pours for the pour that the
#   row's date was taken from. What is said to come off first is not there any more.
package lib.face

import data.lib.facts
import data.lib.words

# told lists what a row or its pour says by one of the signals, and does not take back: {"text", "at", "here", "stays"}.
told(line, id) := array.concat(_in_row(line, id), _in_pour(line, id))

_in_row(line, id) := [t |
	facts.said(line, id)
	some s in line.signals
	s.id == id
	s.slot in data.pairing.surface.slots
	here := [x | some x in line.signals; _is_beside(line, x.at, s.at)]
	not _is_cleared(line.signals, here)
	t := {
		"text": s.text,
		"at": s.at,
		"slot": s.slot,
		"here": _is_own(line, s.at),
		"stays": _says(here, "left_on"),
	}
]

# In the row itself words belong together by the cell, on the sheet of pours by the row.
_is_beside(line, at, other) if {
	_is_own(line, other)
	at == other
}

_is_beside(line, at, other) if {
	not _is_own(line, other)
	at.sheet == other.sheet
	at.row == other.row
}

default _is_own(_, _) := false

_is_own(line, at) if {
	at.sheet == line.sheet
	at.row == line.row
}

_in_pour(line, id) := [t |
	some pour in pours_of(line)
	not _is_cleared(pour.signals, pour.signals)
	not _is_cleared(line.signals, line.signals)
	some s in pour.signals
	s.id == id
	not s.no
	t := {"text": s.text, "at": s.at, "slot": "", "here": false, "stays": _says(pour.signals, "left_on")}
]

# quote gives the row's own words for what is told: the whole cell where it is short.
quote(line, t) := sprintf("\"%s\"", [line.texts[t.slot]]) if {
	t.here
	count(line.texts[t.slot]) <= 90
} else := words.quoted(t.text)

# pours_of lists the pours that the row's concrete date stands in, or that its substrate names.
pours_of(line) := [pour | some pour in input.pours; _is_of(line, pour)]

_is_of(line, pour) if {
	pour.at.sheet == line.dates.placed.at.sheet
	pour.at.row == line.dates.placed.at.row
}

_is_of(line, pour) if {
	pour.name != ""
	padded := sprintf(" %s ", [_plain(pour.name)])
	contains(sprintf(" %s ", [_plain(line.texts.substrate)]), padded)
}

_plain(text) := regex.replace(lower(text), `[^\p{L}\d]+`, " ")

# Left on, in the same cell, beats taken off: "forms stripped, oil left on".
_is_cleared(signals, here) if {
	_says(signals, "removed")
	not _says(here, "left_on")
}

_says(signals, id) if {
	some s in signals
	s.id == id
	not s.no
}

default _says(_, _) := false

# two_minds holds a dry face of one cell that the remark says is wet: {dry, wet}, each a signal.
two_minds(line) := {"dry": dry[0], "wet": wet[0]} if {
	wet := [s | some s in line.signals; s.id == "surface_wet"; not s.no; s.slot == "remark"]
	dry := [s | some s in line.signals; s.id == "surface_dry"; not s.no]
	count(wet) > 0
	count(dry) > 0
	every s in dry { s.slot == "substrate" }
	not facts.denied(line, "surface_wet")
}
