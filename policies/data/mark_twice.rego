# METADATA
# title: One mark twice with different materials
# description: |
#   Two rows have the same number and the same place, and name different sheets or primers: one is a leftover, and
#   the crew builds the one it finds first. Take the old row out or strike it. It does not apply to tables by wall
#   type or layer, in which rows share marks by design, nor to rows that are struck out, nor to
#   one row that tells of work in a shop and of more on site.
# custom:
#   id: data-mark-twice
#   topic: data
#   severity: error
#   reason: The site can build only one of the two, and will build the one it finds first.
#   remedy: Strike out the row that is not meant.
#   source: common practice
#   basis: common-practice
#   example: "3.04 is there twice at the same place, once FM-1 on P-1 and once FM-3 on P-4"
#   looks: across rows
package data.mark_twice

import data.lib.facts
import data.lib.finding
import data.lib.words

findings contains finding.at_with(rows[0], ["mark", "material", "primer"], message, {"related": related}) if {
	some rows in _twins
	count(rows) == 2
	rows[0].row != rows[1].row
	rows[0].role == rows[1].role
	rows[0].table in _single_tables
	said := [_build(row) | some row in rows]
	said[0] != said[1]
	message := sprintf("%s is there twice for the same place, once with %s and once with %s", [
		rows[0].mark,
		said[0],
		said[1],
	])
	related := [finding.related(rows[1], ["mark", "material", "primer"], "the other row")]
}

_twins := {key: rows |
	some key in {one.key | some one in _marked}
	rows := [other.line | some other in _marked; other.key == key]
}

_marked := [{"key": key, "line": line} |
	some line in facts.live_lines
	trim_space(object.get(line.texts, "mark", "")) != ""
	object.get(line, "place", "") != ""
	object.get(line, "order", "") == ""
	key := lower(concat("|", [line.table, line.mark, line.place]))
]

_single_tables := {table |
	some table, marks in _marks_of
	count({mark | some mark in marks}) >= count(marks) * data.data.marks.single_share
}

_marks_of := {table: marks |
	some table in {one.line.table | some one in _marked}
	marks := [other.line.mark | some other in _marked; other.line.table == table]
}

_build(line) := words.list(sort({item.text |
	some item in facts.items_in(line, ["material", "primer"])
}))
