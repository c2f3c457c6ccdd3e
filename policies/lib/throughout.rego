# METADATA
# title: What most rows say
# description: |
#   What one rule finds in a good part of the rows of a table is one matter: it is told once, at the heading of the
#   table, with the rows that are meant. The engine does the same in Go. Notes stay where they are, and so does all that
#   a comparison finds, which goes through two schedules row by row.
package lib.throughout

# told(all): findings as lib.answer makes them, with those of many rows told once.
told(all) := all if {
	input.comparison != null
} else := (all - {f | some group in _groups(all); some f in group.found}) | {_one(group) | some group in _groups(all)}

_groups(all) := {group |
	some rule in {f.rule | some f in all}
	some table in input.reading.tables
	found := {f | some f in all; f.rule == rule; f.severity != "note"; _table[[f.sheet, f.row]] == table.id}
	rows := {f.row | some f in found}
	count(rows) >= data.lib.most.rows
	count(rows) >= data.lib.most.share * _size[table.id]
	group := {"found": found, "rows": rows, "table": table}
}

_one(group) := object.union(object.remove(first, ["line"]), {
	"severity": [s | some s in ["error", "warning"]; _has(group, s)][0],
	"row": head,
	"mark": "",
	"cells": sort({regex.replace(cell, `[0-9]+$`, sprintf("%d", [head])) | some cell in first.cells}),
	"message": sprintf(data.lib.most.message, [count(group.rows), _size[group.table.id], first.row, first.message]),
	"remedy": sprintf(data.lib.most.remedy, [first.remedy]),
	"related": [{"sheet": f.sheet, "row": f.row, "cells": f.cells, "what": f.message} | some f in group.found],
}) if {
	first := _first(group.found)
	head := group.table.heading_rows[count(group.table.heading_rows) - 1]
}

# _first is what the table is told by: its upper row, the worse, the message first in the alphabet.
_first(found) := sort([[f.row, f.severity, f.message, f] | some f in found])[0][3]

_has(group, severity) if {
	some f in group.found
	f.severity == severity
}

_table := {[line.sheet, line.row]: line.table | some line in input.lines}

_size := {table.id: count({line.row | some line in input.lines; line.table == table.id}) |
	some table in input.reading.tables
}
