# METADATA
# title: Concrete age asked for
# description: |
#   The age that concrete must have under a sheet: the strictest of the project's notes and the product's data, else
#   the usual figure for the chemistry.
package lib.age

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.sheet
import data.lib.words

# limit is {"days", "says", "from", ...}; undefined where nothing asks for an age.
limit(line, item) := found if {
	stated := array.concat(_noted(line, item), _of_product(line))
	top := max([l.days | some l in stated])
	found := [l | some l in stated; l.days == top][0]
} else := {"days": days, "says": sprintf("%s is the usual least", [words.days(days)]), "from": "usual"} if {
	days := data.pairing.concrete_age.days[sheet.chemistry(item)]
	not _is_tested(line)
}

# severity: a stated age is broken, the usual one is asked about; so is an age that only may be too low.
severity(line, span, found) := "warning" if {
	span.max >= found.days
} else := "warning" if {
	found.from == "usual"
} else := "warning" if {
	_is_tested(line)
} else := "error"

# related names the note that asks for the age.
related(found) := [finding.related_address(found.at, found.text)] if {
	found.from == "notes"
} else := []

# source is that of the usual figure, where it counts.
source(found) := {"source": data.pairing.concrete_age.source} if {
	found.from == "usual"
} else := {}

_noted(line, item) := [{
	"days": l.min,
	"says": sprintf("the notes ask for %s", [words.days(l.min)]),
	"from": "notes",
	"at": l.at,
	"text": l.text,
} |
	l := limits.highest_min(limits.limits_for("concrete_age_days", line, item.keys, line.role))
]

_of_product(line) := [{
	"days": f.min,
	"says": sprintf("%s for %s", [_asker(line), words.days(f.min)]),
	"from": "product",
} |
	f := _own_figure(line)
	f.min > 0
]

# With the primer of the row its product may go on younger concrete.
_own_figure(line) := line.figures.primed_concrete_age_days if {
	not line.figures.concrete_age_days
} else := facts.figure_of(line, "concrete_age_days")

_asker(line) := "the row itself asks" if line.figures.concrete_age_days

_asker(line) := "its data asks" if not line.figures.concrete_age_days

_is_tested(line) if facts.said(line, "moisture_tested")
