# METADATA
# title: Material for tests of temperature, exposure and sequence
package lib.season_bench_test

import data.lib.bench_test as bench

# sheet is one row 12 with a self-adhered sheet and a primer; more overrides.
sheet(more) := bench.line("W!12", 12, object.union(
	{
		"items": [fm_1, p_2],
		"cells": {
			"install": "K12",
			"cover": "L12",
			"prime": "J12",
			"lap": "N12",
			"edge": "O12",
			"shelter": "P12",
			"placed": "Q12",
			"place": "B12",
		},
	},
	more,
))

# document holds lines, products and windows of a job in Milwaukee.
document(lines, products, windows) := object.union(bench.document([], products), {
	"lines": lines,
	"windows": windows,
	"project": {"place": {"text": "Milwaukee", "station": "MILWAUKEE", "problem": ""}},
})

# with_notes adds limits and signals of the project.
with_notes(doc, limits, signals) := object.union(doc, {"project": {"limits": limits, "signals": signals}})

fm_1 := bench.item("material", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic", "self-adhered"])

p_2 := bench.item("primer", "P-2", "water-primer", "primer", ["water-borne", "acrylic"])

# window is 19 Jan in Milwaukee by default, with the usual grades.
window(checks, more) := object.union(
	{
		"line": "W!12",
		"from": "2027-01-19",
		"to": "2027-01-19",
		"mean_min_c": -9.2,
		"mean_max_c": -1.8,
		"night_frost": 0.92,
		"checks": checks,
		"grades": grades,
	},
	more,
)

grades := [
	grade("standard", "standard grade", 4.44, "40 F", 0.9, 0.12),
	grade("low-temperature", "low-temperature grade", -6.67, "20 F", 0.38, 0.67),
	grade("extra-low", "extra-low-temperature grade", -17.78, "0 F", 0.04, 0.97),
]

grade(id, name, limit_c, text, below, usable) := {
	"id": id,
	"name": name,
	"limit_c": limit_c,
	"limit_text": text,
	"share_below": below,
	"days_usable": usable,
}

# check is one limit of a material in row 12.
check(role, text, limit_c, limit_text, below, usable, more) := object.union(
	{
		"item": "",
		"role": role,
		"text": text,
		"product": "",
		"keys": [],
		"bound": "apply_min_c",
		"limit_c": limit_c,
		"limit_text": limit_text,
		"stated": true,
		"share_below": below,
		"share_above": 1 - below,
		"days_usable": usable,
		"at": {"sheet": "W", "row": 12, "cell": _cells[role]},
	},
	more,
)

_cells := {"membrane": "C12", "primer": "F12", "sealant": "H12", "adhesive": "H12"}

# signal is one signal told in a slot of row 12.
signal(id, slot, text) := object.union(bench.said(id, text), {"slot": slot})

denial(id, slot, text) := object.union(signal(id, slot, text), {"no": true})

# figure is a stated quantity.
figure(least, most, text, unit) := {
	"min": least,
	"max": most,
	"no_limit": false,
	"text": text,
	"unit": unit,
	"disagree": false,
	"other": null,
	"assumed": false,
	"problem": "",
}

# limit is a limit stated in the notes.
limit(kind, more) := object.union(
	{
		"kind": kind,
		"min": null,
		"max": null,
		"roles": [],
		"keys": [],
		"scope": "",
		"when": [],
		"text": "Note 7",
		"at": {"sheet": "N", "row": 9, "cell": "A9"},
	},
	more,
)

# day is a date that stands in a row.
day(iso, text, slot_cell) := {
	"from": iso,
	"to": iso,
	"text": text,
	"state": "day",
	"ref": "",
	"note": "",
	"at": {"sheet": "W", "row": 12, "cell": slot_cell},
}

# span counts days from and to.
span(least, most, last, from, to) := {"min": least, "max": most, "last": last, "from": from, "to": to}

# own gives FM-1 the data of its tag, with these figures.
own := bench.own(fm_1)

product(more) := bench.product("FM-1", object.union(
	{
		"role": "membrane",
		"cells": {"apply_min": "D4", "apply_max": "E4", "service_max": "F4", "exposure_days": "G4"},
	},
	more,
))

# item_of is another material in row 12, of some class.
item_of(slot, text, class) := bench.item(slot, text, "", class, [])

# line_of is another row of the table.
line_of(row, more) := bench.line(sprintf("W!%d", [row]), row, object.union(
	{"cells": {"install": sprintf("K%d", [row])}},
	more,
))
