# METADATA
# title: How a faulty section is told
# description: |
#   Where the finding stands, what lies where in the section, and how cold it is there.
package lib.fault

import data.lib.facts
import data.lib.finding
import data.lib.winter
import data.lib.words

outer(fault) := fault.layers[fault.outer]

inner(fault) := fault.layers[fault.inner]

# outer_line is the row of the outer layer, where the reader would change it.
outer_line(fault) := facts.lines_by_id[outer(fault).line]

# cells marks the outer layer, and the cell of the build-up where the row tells it.
cells(fault) := array.concat(["material", "tag", "layers"], [cell | cell := outer(fault).at.cell; cell != ""])

# related names the rows of the inner barrier and of the insulation inside of the outer one.
related(fault) := [finding.related(line, ["material", "tag"], what) |
	some i, layer in array.slice(fault.layers, 0, fault.outer)
	what := _what(fault, i, layer)
	layer.line != outer(fault).line
	line := facts.lines_by_id[layer.line]
]

_what(fault, i, _) := "the inner barrier" if i == fault.inner

_what(fault, i, layer) := "the insulation" if {
	i != fault.inner
	layer.insulates
}

# cold words the winter: "23 °F in the three coldest months".
cold(fault) := sprintf("%s in the three coldest months", [winter.written(fault.winter)])

# share words what lies outside and what would have to: " (8% of the resistance lies outside it, 38% is needed)".
share(fault) := sprintf(" (%s of the resistance lies outside it, %s is needed)", [
	words.percent(outer(fault).share),
	words.percent(fault.needed),
]) if {
	is_number(outer(fault).share)
	is_number(fault.needed)
} else := ""
