# METADATA
# title: Findings
# description: |
#   The one way in which a rule makes a finding. A finding names its place (a line, a product row, or an address),
#   the cells to mark, and one sentence. The engine adds rule, topic, severity, reason, remedy and source from the
#   metadata of the rule, unless the finding carries its own.
#   Slots are column slots of the line ("membrane", "substrate") or cell addresses ("F12"); a slot without a cell is
#   left out.
package lib.finding

# at(line, ["material", "substrate"], message): the usual finding.
at(line, slots, message) := {"line": line.id, "cells": cells(line, slots), "message": message}

# at_with adds severity, reason, remedy, source, related, keys or facts: the ids of the facts of the document that are
# judged (a contact, an item, a check of a window as "item bound"), by which a report draws them.
at_with(line, slots, message, extra) := object.union(at(line, slots, message), extra)

# for_product is a finding at a row of product data.
for_product(product, slots, message, extra) := object.union(
	{"product": product.id, "cells": cells(product, slots), "message": message},
	extra,
)

# for_address is a finding at a note, a title block or any other cell: at is {"sheet", "row", "cell"}.
for_address(at, message, extra) := object.union({"at": at, "cells": _cell_of(at), "message": message}, extra)

# related names another line that takes part, and what it does there.
related(line, slots, what) := {"line": line.id, "cells": cells(line, slots), "what": what}

# related_product names a row of product data that takes part.
related_product(product, slots, what) := {"product": product.id, "cells": cells(product, slots), "what": what}

# related_address names a note or any other cell that takes part.
related_address(at, what) := {"at": at, "cells": _cell_of(at), "what": what}

# worst is the worst of some severities.
worst(severities) := "error" if {
	"error" in severities
} else := "warning" if {
	"warning" in severities
} else := "note"

# cells turns slots into the cell addresses of a line or product, sorted, each once.
cells(row, slots) := sort({cell |
	some slot in slots
	cell := _cell(row, slot)
})

_cell(row, slot) := row.cells[slot] if not _is_address(slot)

_cell(_, slot) := slot if _is_address(slot)

_is_address(slot) if regex.match(`^[A-Z]{1,3}[1-9][0-9]*$`, slot)

_cell_of(at) := [at.cell] if at.cell != ""

_cell_of(at) := [] if object.get(at, "cell", "") == ""
