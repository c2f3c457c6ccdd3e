# METADATA
# title: Uses of products
# description: |
#   In which live rows a product is named and said to be there.
# custom:
#   looks: across rows
package lib.uses

import data.lib.facts
import data.lib.finding

# of lists the uses of a product in any slot: {"line", "item"}, in the order of the rows.
of(product) := object.get(_by_product, product.id, [])

# main lists the uses of a product as the own material of a row, named in its material or tag cell.
main(product) := [use | some use in of(product); use.item.slot in {"material", "tag"}]

# related names the rows of the uses, each row once, without the first `skip` of them.
related(uses, skip) := array.slice(rows, skip, count(rows)) if {
	rows := [finding.related(use.line, [use.item.at.cell], sprintf("uses %s", [use.item.text])) |
		some i, use in uses
		not _is_again(uses, i)
	]
}

_is_again(uses, i) if uses[i - 1].line.id == uses[i].line.id

_by_product := {id: uses |
	some product in input.products
	id := product.id
	uses := [use | some use in _all; use.item.product == id]
}

_all := [{"line": line, "item": item} |
	some line in facts.live_lines
	some item in line.items
	item.product != ""
	facts.is_there(item)
]
