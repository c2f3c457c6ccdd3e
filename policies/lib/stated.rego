# METADATA
# title: Stated figures
# description: |
#   The figure that a row, or the data of its own material, states of a kind, and which end of it counts.
package lib.stated

import data.lib.facts
import data.lib.measure

# figure is {"figure", "item", "from": row or product, "by": product}; undefined where neither states one that can be
# read.
figure(line, kind) := {"figure": line.figures[kind], "item": facts.main_items(line)[0], "from": "row", "by": {}} if {
	_is_read(line.figures[kind])
} else := found if {
	all := [{"figure": f, "item": item, "from": "product", "by": product} |
		some item in facts.main_items(line)
		product := facts.product_of(item)
		f := product.figures[kind]
		_is_read(f)
	]
	found := all[0]
}

# whose words it for a sentence: "the row" or "its data".
whose(found) := "its data" if found.from == "product"

whose(found) := "the row" if found.from == "row"

_is_read(figure) if {
	figure.no_limit
} else if {
	object.get(figure, "problem", "") == ""
	not figure.disagree
	measure.low(figure)
}
