# METADATA
# title: Material for tests of contacts and pairings
package lib.bench_test

# end is one side of a contact at W!12; the cell is that of its slot.
end(slot, text, family, class, traits) := {
	"item": "",
	"line": "W!12",
	"slot": slot,
	"text": text,
	"tag": text,
	"product": "",
	"family": family,
	"name": family,
	"class": class,
	"keys": array.concat([family], traits),
	"at": {"sheet": "W", "row": 12, "cell": _cells[slot]},
}

# Ends that many tests use.
sheet := end("material", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic", "polyethylene-film"])

butyl := end("material", "FM-3", "butyl-flashing-tape", "tape", ["butyl"])

epdm := end("touches", "EPDM boot", "epdm-gasket", "gasket", ["epdm"])

vinyl := end("touches", "R-1", "pvc-roof-membrane", "roofing", ["pvc-plasticized", "plasticized"])

solvent_sealant := end("sealant", "S-3", "butyl-sealant", "sealant", ["butyl", "solvent-borne"])

copper := end("material", "C-1", "copper-sheet", "flashing-metal", ["copper", "copper-runoff-source", "metal"])

aluminum := end("touches", "A-2", "aluminum-sheet", "flashing-metal", ["aluminum", "metal"])

xps := end("substrate", "I-1", "xps", "insulation", ["polystyrene", "heat-sensitive"])

# contact joins two ends; more overrides.
contact(a, b, more) := object.union(
	{
		"id": concat("-", [a.text, b.text]),
		"line": "W!12",
		"a": a,
		"b": b,
		"kind": "direct",
		"separator": null,
		"clear_mm": null,
		"wet": false,
		"from": "touches",
		"signals": [],
		"clause": "",
		"at": {"sheet": "W", "row": 12, "cell": "G12"},
	},
	more,
)

# document holds contacts told in live rows 12 and 13, and a struck row 14.
document(contacts, products) := {
	"lines": [line("W!12", 12, {}), line("W!13", 13, {}), line("W!14", 14, {"struck": true})],
	"products": products,
	"contacts": contacts,
	"pours": [],
	"windows": [],
	"project": {"limits": [], "signals": []},
	"reading": {"tables": []},
}

line(id, row, more) := object.union(
	{
		"id": id,
		"sheet": "W",
		"row": row,
		"table": "t1",
		"mark": "",
		"group": "",
		"place": "",
		"role": "membrane",
		"struck": false,
		"cells": {slot: cell | some slot, cell in _cells},
		"texts": {},
		"items": [],
		"figures": {},
		"dates": {},
		"spans": {},
		"signals": [],
	},
	more,
)

product(id, more) := object.union(
	{
		"id": id,
		"tag": id,
		"name": "",
		"role": "",
		"family": "",
		"class": "",
		"keys": [],
		"cells": {"keep_off": "J4", "accepts": "I4"},
		"texts": {},
		"figures": {},
		"accepts": [],
		"keep_off": [],
		"suits": [],
		"signals": [],
	},
	more,
)

target(text, keys, products) := {"text": text, "keys": keys, "products": products, "except": false}

# row is one judgement of the table of pairs.
row(a, b, verdict, mechanism, severity) := {
	"id": concat("__", [a, b]),
	"a": a,
	"b": b,
	"exposure": "contact",
	"order": null,
	"state": "any",
	"verdict": verdict,
	"mechanism": mechanism,
	"severity": severity,
	"condition": "Some condition.",
	"remedy": "Some remedy.",
	"separators_that_work": [],
	"separators_that_do_not": [],
	"source": {"ref": "Some handbook"},
	"basis": "source-read",
	"confidence": 0.9,
}

# pairs indexes rows as the knowledge does.
pairs(rows) := {a: by_b |
	some r in rows
	a := r.a
	by_b := {b: listed |
		some s in rows
		s.a == a
		b := s.b
		listed := [t | some t in rows; t.a == a; t.b == b]
	}
}

_cells := {
	"material": "C12",
	"substrate": "E12",
	"primer": "F12",
	"touches": "G12",
	"sealant": "H12",
	"remark": "M12",
	"behind": "K12",
}

# item is a material named in a row.
item(slot, text, family, class, traits) := object.union(end(slot, text, family, class, traits), {
	"id": concat("/", ["W!12", text]),
	"polarity": "yes",
	"relation": "",
	"clause": "",
	"signals": [],
	"traits": traits,
	"unknown": false,
})

# schedule holds one row 12 with these items, in a table that has a primer column.
schedule(items, more, products) := object.union(document([], products), {
	"lines": [line("W!12", 12, object.union({"items": items}, more))],
	"reading": {"tables": [{"id": "t1", "columns": [{"slot": "material"}, {"slot": "primer"}]}]},
})

# own gives an item the product data of its tag.
own(one) := object.union(one, {"product": one.text})

# said is one signal in row 12.
said(id, text) := {
	"id": id,
	"no": false,
	"text": text,
	"slot": "remark",
	"at": {"sheet": "W", "row": 12, "cell": "M12"},
}

accepts(text, keys, how, primers) := object.union(target(text, keys, []), {
	"primer": how,
	"primers": primers,
	"only": false,
	"at": {"sheet": "P", "row": 4, "cell": "I4"},
})

sbs := item("material", "FM-1", "rubberized-asphalt-membrane", "membrane", ["asphaltic", "polyethylene-film"])

butyl_tape := item("material", "FM-3", "butyl-flashing-tape", "tape", ["butyl"])

permeable := item("material", "FM-4", "vapor-permeable-self-adhered-membrane", "membrane", ["acrylic-adhesive"])

fluid := item("material", "FA-1", "fluid-applied-acrylic-air-barrier", "membrane", ["acrylic", "water-borne"])

block := item("substrate", "CMU", "concrete-masonry", "masonry", ["cement-based", "porous-masonry"])

concrete := item("substrate", "CIP curb", "cast-concrete", "substrate", ["cement-based", "porous-masonry"])

glass_mat := item("substrate", "GMGS", "glass-mat-gypsum-sheathing", "substrate", ["gypsum", "glass-fiber"])

plywood := item("substrate", "plywood", "osb-plywood-sheathing", "substrate", ["wood"])

angle := item("substrate", "Z-1", "galvanized-sheet", "flashing-metal", ["zinc-coated", "metal"])

foam := item("substrate", "I-1 edge", "xps", "insulation", ["polystyrene"])

solvent_primer := item("primer", "P-1", "solvent-primer", "primer", ["solvent-borne", "asphalt-cutback"])

water_primer := item("primer", "P-2", "water-primer", "primer", ["water-borne", "acrylic"])

butyl_primer := item("primer", "P-4", "", "primer", ["solvent-borne"])
