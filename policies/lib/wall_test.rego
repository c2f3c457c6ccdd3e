# METADATA
# title: Material for tests of sections
package lib.wall_test

import data.lib.desk_test as desk

# layer is one layer of a profile, told in row n.
layer(n, text, family, class, ng) := {
	"line": sprintf("W!%d", [n]),
	"item": "",
	"text": text,
	"product": "",
	"family": family,
	"class": class,
	"keys": [family],
	"vapor_ng": ng,
	"vapor_by": "stated",
	"thickness_mm": null,
	"insulates": class == "insulation",
	"at": {"sheet": "W", "row": n, "cell": sprintf("C%d", [n])},
}

gypsum := layer(35, "gypsum board", "gypsum-board", "substrate", 3000)

film := layer(36, "VR-1", "polyethylene-sheet", "membrane", 3.4)

batt := layer(37, "batt", "glass-fiber-insulation", "insulation", 1700)

sheathing := layer(38, "glass-mat sheathing", "glass-mat-gypsum-sheathing", "substrate", 1500)

sheet := layer(40, "AB-1", "rubberized-asphalt-membrane", "membrane", 2.86)

open_sheet := layer(40, "AB-3", "vapor-permeable-self-adhered-membrane", "membrane", 1030)

wool := layer(41, "mineral wool", "mineral-wool", "insulation", 2800)

foil_board := layer(41, "PIR-1", "polyiso", "insulation", 1.7)

panel := layer(42, "steel panel", "metal-cladding", "cladding", 0)

cold := -5.2

mild := 9.5

# profile holds these layers, in a winter of so many degrees; result overrides what was computed.
profile(layers, winter, result) := {
	"id": "W5",
	"mark": "W5",
	"lines": sort({one.line | some one in layers}),
	"layers": layers,
	"missing": [],
	"result": object.union(
		{
			"known": false,
			"share": {"out_c": winter, "needed_outside_share": null},
			"conditions": {"out_c": [], "out_rh": [], "estimated": false},
			"layers": [],
			"planes": [],
		},
		result,
	),
}

# shares are computed layers with these shares of resistance outside of them.
shares(list) := {"layers": [{"outside_share": share, "vapor_class": ""} | some share in list]}

# document holds rows 35 to 42 and the profiles.
document(profiles, more) := object.union(
	object.union(
		desk.document([desk.row(n, "X-1", {}) | some n in numbers.range(35, 42)], [], []),
		{"profiles": profiles},
	),
	more,
)
