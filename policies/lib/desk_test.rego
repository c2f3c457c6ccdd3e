# METADATA
# title: Material for tests of figures, dates and products
package lib.desk_test

import data.lib.bench_test as bench

# figure is one value with its words.
figure(value, text, unit) := {
	"min": value,
	"max": value,
	"no_limit": false,
	"text": text,
	"unit": unit,
	"disagree": false,
	"other": null,
	"assumed": false,
	"problem": "",
	"at": {"sheet": "", "row": 0},
}

# product is a row of product data on sheet P.
product(id, row, more) := object.union(
	bench.product(id, {
		"sheet": "P",
		"row": row,
		"role": "membrane",
		"family": "rubberized-asphalt-membrane",
		"class": "membrane",
		"keys": ["rubberized-asphalt-membrane", "asphaltic"],
		"repeats": false,
		"cells": {slot: sprintf("%s%d", [column, row]) | some slot, column in _columns},
	}),
	more,
)

_columns := {
	"tag": "A",
	"material": "B",
	"type": "C",
	"thickness": "D",
	"apply_min": "E",
	"service_max": "F",
	"exposure_days": "G",
	"air": "H",
	"air_test": "I",
	"vapor": "J",
	"voc": "K",
}

# row is a live line that uses a product as its own material.
row(n, id, more) := object.union(
	bench.line(sprintf("W!%d", [n]), n, {
		"items": [own(n, id)],
		"cells": {slot: sprintf("%s%d", [column, n]) | some slot, column in {
			"material": "C",
			"thickness": "D",
			"substrate": "E",
			"primer": "F",
			"touches": "G",
			"sealant": "H",
			"remark": "M",
			"behind": "K",
			"install": "I",
			"cover": "J",
			"mark": "A",
			"place": "B",
			"tag": "L",
			"air": "N",
			"min_thickness": "O",
		}},
	}),
	more,
)

own(n, id) := object.union(
	bench.item("material", id, "rubberized-asphalt-membrane", "membrane", ["asphaltic"]),
	{"product": id, "line": sprintf("W!%d", [n]), "at": {"sheet": "W", "row": n, "cell": sprintf("C%d", [n])}},
)

# named is another item of row n.
named(n, one, product) := object.union(one, {
	"product": product,
	"line": sprintf("W!%d", [n]),
	"at": {"sheet": "W", "row": n, "cell": sprintf("F%d", [n])},
})

# document holds lines, products and limits.
document(lines, products, limits) := {
	"lines": lines,
	"products": products,
	"contacts": [],
	"pours": [],
	"windows": [],
	"profiles": [],
	"project": {"limits": limits, "signals": [], "notes": [], "indoor": [], "place": {"problem": "", "text": "Boston"}},
	"reading": {"sheets": [], "tables": [{
		"id": "t1",
		"kind": "schedule",
		"sheet": "W",
		"heading_rows": [6],
		"first_row": 7,
		"last_row": 20,
		"columns": [{"letter": "C", "slot": "material"}, {"letter": "F", "slot": "primer"}],
	}]},
}

# limit is a project limit without scope; more narrows it.
limit(kind, low, high, more) := object.union(
	{
		"kind": kind,
		"min": low,
		"max": high,
		"roles": [],
		"keys": [],
		"scope": "",
		"when": [],
		"text": "Note 3",
		"at": {"sheet": "Notes", "row": 3, "cell": "A3"},
	},
	more,
)

# said is one signal in a slot of row n.
said(n, id, slot) := {
	"id": id,
	"no": false,
	"text": id,
	"slot": slot,
	"at": {"sheet": "W", "row": n, "cell": sprintf("M%d", [n])},
}

# levels is the set of severities of findings.
levels(found) := {object.get(f, "severity", "") | some f in found}
