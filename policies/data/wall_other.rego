# METADATA
# title: Row of another wall than its wall type tells
# description: |
#   Neither the sheet nor the backing of the row is a layer of the wall type that it stands under: a sheet on strand
#   board under the type of a cast foundation. One of the two was copied from a neighbor; whoever goes by the wall
#   type orders the wrong sheet. It does not apply where one of the two fits, to strips at openings and edges, to a
#   sheet that came in place of the row's own, nor to wall types that name no sheet or no backing.
# custom:
#   id: data-wall-other
#   topic: data
#   severity: warning
#   reason: Sheet, insulation and primer of a row follow from its wall type, and this row is of another wall.
#   remedy: Ask which wall stands there, and correct the wall type or the row.
#   source: the workbook's own wall types
#   basis: source-read
#   example: "row: SA-2 on plywood, wall type F1; wall types: F1, WP-5 on cast concrete"
package data.wall_other

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.wall_type

findings contains finding.at_with(one.line, cells, message, {"related": [related]}) if {
	some one in _rows
	some wall in _lone_wall(one.line)
	layers := facts.items_in(wall, ["layers"])
	sheet := _other_sheet(one.item, layers)
	backing := _other_backing(one.under, layers)
	message := naming.say("%s on %s is no layer of %s, whose build-up has %s and %s", [
		naming.plain(one.item),
		one.under.text,
		wall.mark,
		sheet.text,
		backing.text,
	])
	cells := ["group", "material", "tag", one.under.at.cell]
	related := finding.related(wall, ["layers"], "the wall type")
}

# Rows of one sheet of the field, with what it goes on.
_rows := [{"line": line, "item": items[0], "under": under} |
	some line in facts.live_lines
	line.role == "membrane"
	items := facts.main_items(line)
	count(items) == 1
	items[0].product != ""
	items[0].family != ""
	not _is_local(line)
	not _stood_in(line)
	under := facts.items_in(line, ["substrate"])[0]
]

_lone_wall(line) := walls if {
	walls := wall_type.of(line)
	count(walls) == 1
}

# The sheet of the wall type, where that has not the row's own.
_other_sheet(item, layers) := sheets[0] if {
	sheets := [l | some l in layers; l.class == "membrane"; l.product != ""; not l.family in _inside]
	not item.product in {l.product | some l in layers}
	not item.family in {l.family | some l in layers}
}

# Its backing, where nothing of it is of the stuff of the row's.
_other_backing(under, layers) := backing[0] if {
	stuff := _stuff(under)
	count(stuff) > 0
	backing := [l | some l in layers; count(_stuff(l)) > 0]
	every l in backing { count(_stuff(l) & stuff) == 0 }
}

_inside := {family | some family in data.vapor.barriers.inside_families}

# _stuff is what a backing is made of: of wood, of gypsum, of cement, of metal.
_stuff(item) := {key |
	item.class in {"substrate", "masonry", "lumber"}
	some key in item.keys
	key in data.data.walls.stuff
}

_is_local(line) if {
	some text in [line.place, object.get(line.texts, "type", "")]
	some words in [data.vapor.barriers.local_words, data.data.build_up.edges] # a wall is built otherwise at its edges
	regex.match(words, lower(text))
}

_stood_in(line) if {
	some item in line.items
	item.relation == "instead_of"
}
