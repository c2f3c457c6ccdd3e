# METADATA
# title: Empty cells
# description: |
#   Which cells of a row are empty, and which notes ask for them to be filled.
package lib.blank

import data.lib.limits

# is_blank: the table has a cell for the slot and nothing stands in it. A dash is not empty.
is_blank(line, slot) if {
	line.cells[slot]
	trim_space(object.get(line.texts, slot, "")) == ""
	not _is_dated(line, slot)
}

# A date without words is a real date of the sheet.
_is_dated(line, slot) if {
	day := line.dates[slot]
	not day.state in {"missing", "unknown"}
}

# demands lists the notes that ask for the cell of that slot.
demands(line, slot) := [limit |
	some limit in limits.limits_for("filled_cells", line, _keys(line), line.role)
	_asks(limit, line, slot)
]

_asks(limit, line, slot) if {
	span := _span(limit)
	letter := trim_right(line.cells[slot], "0123456789")
	_place(letter) >= _place(span[0])
	_place(letter) <= _place(span[1])
}

_asks(limit, _, slot) if {
	not _span(limit)
	slot in data.data.cells.usual
}

_span(limit) := [parts[1], parts[2]] if {
	parts := regex.find_all_string_submatch_n(data.data.cells.range, limit.text, 1)[0]
}

# A column's place in the sheet: shorter letters come first.
_place(letter) := sprintf("%d%s", [count(letter), letter])

_keys(line) := {key | some item in line.items; item.slot == "material"; some key in item.keys}
