# METADATA
# title: What a row tells of its inside
# description: |
#   A row that is in no section may still tell two barriers: its sheet, or a tight board outside of an open sheet, and a
#   film or vinyl on the room side of filled studs.
# custom:
#   looks: across rows
package lib.inside

import data.lib.facts
import data.lib.limits
import data.lib.section
import data.lib.vaporclass
import data.lib.wall_type

# pairs lists rows with both: {"line", "outer": item, "inner": words, "cell", "vinyl": true or false}.
pairs := [{"line": line, "outer": outer, "inner": inner.text, "cell": inner.cell, "vinyl": inner.vinyl} |
	some line in facts.live_lines
	_may_close(line)
	not line.id in section.judged_lines
	inner := barrier(line)
	_is_closed_in(line, inner)
	outer := _outer(line)
]

# A sheet closes a wall; so does a board faced with foil where its joints are taped, or the wall type keeps the inside
# open to dry by.
_may_close(line) if line.role in data.performance.sheets.vapor_roles

_may_close(line) if {
	_is_foil_board(line)
	some wall in wall_type.of(line)
	facts.said(wall, "vapor_open_inside")
}

_may_close(line) if {
	_is_foil_board(line)
	some slot in data.vapor.barriers.taped.slots
	text := lower(object.get(line.texts, slot, ""))
	regex.match(data.vapor.barriers.taped.words, text)
	not regex.match(data.vapor.barriers.taped.unless, text)
}

_is_foil_board(line) if {
	line.role == "insulation"
	board := facts.main_items(line)[0]
	board.class == "insulation"
	facts.has_key(board, data.vapor.classes.tight_keys)
	vaporclass.of(board) in data.vapor.barriers.foam_vapor
}

# across lists films of one row and tight sheets of another row of the same wall, where no section tells their order and
# all insulation is in the studs, or the notes bar a second barrier wherever it lies: {"line" of the film, "outer",
# "outer_line", "inner": words, "cell", "vinyl", "filled": the studs are, "barred": rows of wall types that bar it}; or
# the row of a film tells itself of the tight sheet outside.
across := array.concat(_across_rows, _in_one_row)

_in_one_row := [{
	"line": line,
	"outer": outer,
	"outer_line": line,
	"inner": film.text,
	"cell": film.at.cell,
	"vinyl": is_vinyl(film.family, film.text),
	"filled": true,
	"barred": [],
	"noted": [],
} |
	facts.project_said("one_tight_layer")
	some line in facts.live_lines
	not line.id in section.told_lines
	film := facts.main_items(line)[0]
	film.family in data.vapor.barriers.inside_families
	_tells_inside(line)
	outer := [item | some item in line.items; _is_told_outside(item); item.id != film.id][0]
	not line.id in {other.line.id | some other in _across_rows}
]

_is_told_outside(item) if {
	facts.is_there(item)
	item.class in data.vapor.barriers.sheet_classes
	vaporclass.is_tight(item)
	regex.match(data.vapor.barriers.outside_words, lower(item.clause))
}

_across_rows := [{
	"line": line,
	"outer": outer.item,
	"outer_line": outer.line,
	"inner": item.text,
	"cell": item.at.cell,
	"vinyl": is_vinyl(item.family, item.text),
	"filled": _is_filled(line),
	"barred": _barring(line),
	"noted": _noted(line),
} |
	some line in _film_rows
	not _names_open_outer(line)
	item := facts.main_items(line)[0]
	not _is_walls_own(line, item)
	outer := [found | some found in _sheets_of(_wall(line)); not found.line.id in _paired_lines][0]
	_may_be_cold(line)
]

# The wall type has that film itself, by its words, and an open sheet outside to dry by: a tight sheet there is at fault
# in its own row, or is a strip at an opening.
_is_walls_own(line, film) if {
	some wall in wall_type.of(line)
	own := [item | some item in facts.items_in(wall, {"layers"}); facts.is_there(item)]
	some named in own
	named.family == film.family
	contains(lower(film.text), lower(named.text))
	sheets := [item | some item in own; _is_outer_sheet(item)]
	some item in sheets
	vaporclass.is_open(item)
	every sheet in sheets { not vaporclass.is_tight(sheet) }
}

_is_outer_sheet(item) if {
	item.class in data.vapor.barriers.sheet_classes
	not item.family in data.vapor.barriers.inside_families
}

# barred lists films that a row puts on the room side of its tight sheet, where its wall type says that none lies there,
# whatever the wall holds: {"line", "outer", "film", "wall", "text" of the wall type}.
barred := [{"line": line, "outer": outer, "film": film, "wall": wall, "text": text} |
	some line in facts.live_lines
	line.role in data.performance.sheets.vapor_roles
	not line.id in section.judged_lines
	film := [item |
		some item in facts.items_in(line, data.vapor.barriers.inside_slots)
		item.family in data.vapor.barriers.inside_families
		_is_put_or_led_inside(line, item)
		not _is_separator(item)
	][0]
	outer := _outer(line)
	outer.id != film.id
	wall := [wall | some wall in wall_type.of(line); facts.denied(wall, "vapor_closed_inside")][0]
	text := _keeps_open(wall)[0]
]

# The words that bar the film go before others by which the wall dries inward, as paint.
_keeps_open(wall) := array.concat([text | some text in told; text in denied], told) if {
	told := [said.text | some said in wall.signals; said.id == "vapor_open_inside"; not said.no]
	denied := [said.text | some said in wall.signals; said.id == "vapor_closed_inside"; said.no]
}

# is_put_inside: the row puts a film on the room side, as no slip sheet or the like.
is_put_inside(item) if {
	_is_put_inside(item)
	not _is_separator(item)
}

_is_put_inside(item) if item.slot == "behind"

_is_put_inside(item) if regex.match(data.vapor.barriers.inside_words, lower(item.clause))

_is_put_or_led_inside(_, item) if _is_put_inside(item)

# "Room side: foil on the furring": a word with a colon places what stands right after it.
_is_put_or_led_inside(line, item) if {
	item.clause != ""
	text := lower(object.get(line.texts, item.slot, ""))
	at := indexof(text, lower(item.clause))
	at > 0
	regex.match(data.vapor.barriers.inside_lead, substring(text, 0, at))
}

# A row that tells of both itself is told there.
_paired_lines := {pair.line.id | some pair in pairs}

# The row of the film names the sheet on the other face, which is open: a tight one elsewhere in the wall is not its.
_names_open_outer(line) if {
	some item in line.items
	facts.is_there(item)
	item.class in data.vapor.barriers.sheet_classes
	vaporclass.is_open(item)
	regex.match(data.vapor.barriers.outside_words, lower(item.clause))
}

_may_be_cold(_) if facts.project_said("one_tight_layer")

_may_be_cold(line) if count(_barring(line)) > 0

_may_be_cold(line) if count(_noted(line)) > 0

_may_be_cold(line) if not _wall(line) in _insulated_walls

# The row of the wall type allows one tight layer, or bars one inside, whatever the studs hold.
_barring(line) := [wall |
	some wall in wall_type.of(line)
	_bars(wall)
]

_bars(wall) if facts.said(wall, "one_tight_layer")

_bars(wall) if facts.denied(wall, "vapor_closed_inside")

# A note keeps the inside of the wall open, by its code: "W5: open to dry to the room".
_noted(line) := [limit |
	some limit in object.get(limits.by_kind, "open_inside", [])
	limits.in_scope(limit.scope, line)
]

# _sheets_of lists the sheets of a wall: those that cover it before those at its openings and edges.
_sheets_of(wall) := array.concat(
	[found | some found in _sheet_rows; found.wall == wall; _is_field(found.line)],
	[found | some found in _sheet_rows; found.wall == wall; not _is_field(found.line)],
)

_is_field(line) if {
	not line.role in data.vapor.barriers.not_roles
	not regex.match(data.vapor.barriers.local_words, lower(object.get(line.texts, "place", "")))
}

_film_rows := [line |
	some line in facts.live_lines
	line.group != ""
	not line.id in section.told_lines
	facts.main_items(line)[0].family in data.vapor.barriers.inside_families
	_tells_inside(line)
	_is_closing(line)
]

_is_closing(line) if _has_filled_studs(line)

_is_closing(line) if count(_barring(line)) > 0

_is_closing(line) if count(_noted(line)) > 0

_is_closing(_) if facts.project_said("one_tight_layer")

_is_filled(line) if _has_filled_studs(line)

default _is_filled(_) := false

_film_walls := {_wall(line) | some line in _film_rows}

_wall(line) := concat("|", [line.table, line.group])

_sheet_rows := [{"line": line, "item": item, "wall": _wall(line)} |
	some line in facts.live_lines
	_wall(line) in _film_walls
	line.role in data.performance.sheets.vapor_roles
	not section.is_strip(line)
	not _stood_in(line)
	item := facts.main_items(line)[0]
	not item.family in data.vapor.barriers.inside_families
	vaporclass.is_tight(item)
]

# What came in place of the row's own sheet is told in that row, and is not what the rest of the wall has.
_stood_in(line) if {
	some item in line.items
	item.relation == "instead_of"
	item.slot in {"material", "tag"}
}

# A wall with insulation in a row of its own may have it outside of the sheet.
_insulated_walls := {_wall(line) |
	some line in facts.live_lines
	line.role == "insulation"
}

# tells_inside: the row places its film on the room side of the wall.
tells_inside(line) if _tells_inside(line)

_tells_inside(line) if {
	some slot in data.vapor.barriers.side_slots
	regex.match(data.vapor.barriers.inside_words, lower(object.get(line.texts, slot, "")))
}

_tells_inside(line) if {
	regex.match(data.vapor.barriers.inside_types, lower(object.get(line.texts, "type", "")))
}

# The column of inner neighbors names the lining of the room, or the film goes on it or behind it.
_tells_inside(line) if {
	some lining in facts.items_in(line, data.vapor.barriers.lining_slots)
	lining.family in data.vapor.barriers.lining_families
}

# What the row is called by: "Crib liner, interior".
_tells_inside(line) if {
	some ref in line.refs
	regex.match(data.vapor.barriers.inside_places, lower(ref))
}

_has_filled_studs(line) if facts.said(line, "studs_filled")

_has_filled_studs(line) if {
	not facts.said(line, "studs_empty")
	some item in line.items
	facts.is_there(item)
	item.family in data.vapor.barriers.cavity_families
}

# barrier is the first vapor barrier that the row tells on the room side; undefined without one.
barrier(line) := barriers(line)[0]

# barriers lists {"text", "cell", "slot", "vinyl"}: materials first, then words.
barriers(line) := array.concat(
	[{"text": item.text, "cell": item.at.cell, "slot": item.slot, "vinyl": is_vinyl(item.family, item.text)} |
		some item in facts.items_in(line, data.vapor.barriers.inside_slots)
		item.family in data.vapor.barriers.inside_families
		_is_inside(line, item)
	],
	[{"text": said.text, "cell": said.at.cell, "slot": said.slot, "vinyl": is_vinyl("", said.text)} |
		some said in line.signals
		said.id == "vapor_closed_inside"
		not facts.denied(line, "vapor_closed_inside")
	],
)

is_vinyl(family, _) if family in data.vapor.barriers.vinyl.families

is_vinyl(_, text) if regex.match(data.vapor.barriers.vinyl.words, lower(text))

default is_vinyl(_, _) := false

# A film is on the room side if the row says so, or if it is named with the stud space.
_is_inside(line, _) if facts.said(line, "vapor_closed_inside")

_is_inside(line, item) if {
	not regex.match(data.vapor.barriers.slip_words, lower(item.clause))
	not _is_separator(item)
	_is_with_studs(line, item)
}

_is_inside(line, item) if {
	regex.match(data.vapor.barriers.inside_words, lower(item.clause))
	not _is_separator(item)
	_is_on_filled_studs(line)
}

# The row places the film on the room side, and says elsewhere that the studs are filled.
_is_inside(line, item) if {
	regex.match(data.vapor.barriers.room_side_words, lower(item.clause))
	not _is_separator(item)
	facts.said(line, "studs_filled")
	_may_get_cold(line)
}

# The column of the film is that of the inner side, and the row tells of insulation between the members.
_is_inside(line, item) if {
	item.slot == "behind"
	not _is_separator(item)
	_is_lined(line)
}

_is_lined(line) if {
	line.table in _inner_columns
	some wool in line.items
	facts.is_there(wool)
	wool.family in data.vapor.barriers.cavity_families
	regex.match(data.vapor.barriers.between_words, lower(wool.clause))
	not facts.said(line, "studs_empty")
	_may_get_cold(line)
}

# The column of the film is headed as that of the inner barrier, and the row's wall type has its studs filled.
_is_inside(line, item) if {
	not _is_separator(item)
	_is_in_film_column(line, item.at.cell)
	_is_on_filled_wall(line)
}

# The row places the film inside, and its wall type has the studs filled.
_is_inside(line, item) if {
	regex.match(data.vapor.barriers.inside_words, lower(item.clause))
	not _is_separator(item)
	_is_on_filled_wall(line)
}

_is_in_film_column(line, cell) if {
	some table in input.reading.tables
	table.id == line.table
	some column in table.columns
	column.letter == regex.find_n(`^[A-Z]+`, cell, 1)[0]
	regex.match(data.vapor.barriers.film_heads, lower(column.heading))
}

_is_on_filled_wall(line) if {
	not facts.said(line, "studs_empty")
	some wall in wall_type.of(line)
	not facts.said(wall, "studs_empty")
	some wool in wall.items
	facts.is_there(wool)
	wool.family in data.vapor.barriers.batt_families
	not regex.match(data.vapor.barriers.outside_words, lower(wool.clause))
}

_inner_columns := {table.id |
	some table in input.reading.tables
	some column in table.columns
	column.slot == "behind"
	regex.match(data.vapor.barriers.inner_heads, lower(column.heading))
}

# Insulation outside may keep the sheet warm; a note of the project may bar a second barrier all the same.
_may_get_cold(_) if facts.project_said("one_tight_layer")

_may_get_cold(line) if not _is_insulated_outside(line)

_is_with_studs(line, item) if {
	some other in line.items
	other.at.cell == item.at.cell
	other.family in data.vapor.barriers.cavity_families
	facts.is_there(other)
}

_is_with_studs(line, item) if regex.match(data.vapor.barriers.cavity_words, lower(line.texts[item.slot]))

_is_separator(item) if {
	some signal in item.signals
	signal in data.vapor.barriers.separator_signals
}

_is_closed_in(line, _) if facts.said(line, "studs_filled")

_is_closed_in(line, _) if _is_on_filled_studs(line)

_is_closed_in(line, _) if _is_lined(line)

_is_closed_in(line, inner) if {
	_is_in_film_column(line, inner.cell)
	_is_on_filled_wall(line)
}

_is_closed_in(line, inner) if {
	regex.match(data.vapor.barriers.inside_words, lower(object.get(line.texts, inner.slot, "")))
	_is_on_filled_wall(line)
}

# Where the notes bar a second barrier, a film that the row tells on the room side is one, whatever the studs hold.
_is_closed_in(line, _) if {
	facts.project_said("one_tight_layer")
	facts.said(line, "vapor_closed_inside")
}

# Notes that keep the tight layer on the warm side alone bar one outside of that which the row tells.
_is_closed_in(line, _) if {
	facts.project_said("tight_warm_only")
	facts.said(line, "vapor_closed_inside")
}

_is_closed_in(line, inner) if {
	not facts.said(line, "studs_empty")
	some item in line.items
	facts.is_there(item)
	item.family in data.vapor.barriers.cavity_families
	item.at.cell == inner.cell
}

# The sheet lies on filled studs, and no insulation lies outside of it.
_is_on_filled_studs(line) if {
	not facts.said(line, "studs_empty")
	some item in facts.items_in(line, data.vapor.barriers.under_slots)
	item.family in data.vapor.barriers.cavity_families
	not _is_insulated_outside(line)
}

_is_insulated_outside(line) if {
	some board in facts.items_in(line, data.vapor.barriers.outside_slots)
	board.class == "insulation"
}

_outer(line) := item if {
	item := facts.main_items(line)[0]
	vaporclass.is_tight(item)
	not item.family in data.vapor.barriers.inside_families
} else := item if {
	facts.main_items(line)[0].family in data.vapor.barriers.inside_families
	item := [tight | some tight in facts.items_in(line, data.vapor.barriers.inside_slots); _is_sheet_outside(tight)][0]
} else := item if {
	vaporclass.is_open(facts.main_items(line)[0])
	item := [tight | some tight in outboard(line); vaporclass.of(tight) in data.vapor.barriers.foam_vapor][0]
}

# A row of the film inside may tell of the sheet on the other face of the wall.
_is_sheet_outside(item) if {
	item.class in data.vapor.barriers.sheet_classes
	not item.family in data.vapor.barriers.inside_families
	regex.match(data.vapor.barriers.outside_words, lower(item.clause))
	vaporclass.is_tight(item)
}

# outboard lists the tight boards and sheets outside of the row's own sheet.
outboard(line) := [item |
	some item in facts.items_in(line, data.vapor.barriers.outside_slots)
	_is_outboard(line, item)
	vaporclass.is_tight(item)
]

_is_outboard(_, item) if {
	item.class in data.vapor.open.outside_classes
	not item.family in data.vapor.barriers.inside_families
}

# A film that is told over the insulation outside: "poly over the wool, left behind the panels".
_is_outboard(line, item) if {
	item.family in data.vapor.barriers.inside_families
	item.relation == "over"
	item.side == "subject"
	some under in line.items
	under.at == item.at
	under.clause == item.clause
	under.side == "object"
	under.class == "insulation"
}
