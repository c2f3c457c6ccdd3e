# METADATA
# title: Tables that tell of the edges of sheets
# description: |
#   Where most rows have words for the edge of their sheet, a row without is asked about.
# custom:
#   looks: across rows
package lib.edge_usual

import data.lib.closing
import data.lib.sheet

# of: most of the sheets of the table, and enough of them, have words for their edge.
of(table) if {
	said := [c | some c in _cells_by_table[table]; not c in _empty]
	count(said) >= data.sequence.edge.least_rows
	count(said) / count(_cells_by_table[table]) >= data.sequence.edge.most_of_rows
}

_empty := {w | some list in ["none_words", "doubtful_words"]; some w in data.sequence.edge[list]}

_cells_by_table := {table: cells |
	some table in {line.table | some line in sheet.lines}
	cells := [c | some line in sheet.lines; line.table == table; c := closing.cell(line)]
}
