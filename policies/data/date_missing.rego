# METADATA
# title: Installation date missing
# description: |
#   The other sheets and flashings of the table have dates and this one has an empty cell: its season and its days
#   in the sun cannot be checked, and it is often the one that goes on last, in the cold. Where the notes ask for
#   every cell to be filled it is an error. It does not apply to a dash, which says that there is none, to rows by
#   others, to existing work, and to rows that say 'same as'.
# custom:
#   id: data-date-missing
#   topic: data
#   severity: warning
#   reason: Without the date neither season, days in the sun nor the order of laps can be checked.
#   remedy: Fill in the planned date.
#   source: the project's notes where they ask for filled cells; else common practice
#   basis: common-practice
#   example: "base closure FL-2: installation blank, other rows have dates"
#   looks: across rows
package data.date_missing

import data.lib.blank
import data.lib.facts
import data.lib.finding

findings contains finding.at_with(line, ["install"], message, extra) if {
	some line in facts.live_lines
	_is_sheet(line)
	blank.is_blank(line, "install")
	line.table in _dated_tables
	not _is_excused(line)
	message := sprintf("the installation date of %s is empty, and the other sheets of the table have one", [_who(line)])
	extra := _extra(line)
}

_extra(line) := {"severity": "error", "related": [finding.related_address(demand.at, demand.text)]} if {
	demand := blank.demands(line, "install")[0]
} else := {"severity": "warning"}

_dated_tables := {line.table |
	some line in facts.live_lines
	_is_sheet(line)
	line.dates.install.state in data.data.dates.dated
}

_is_sheet(line) if line.role in data.data.dates.roles

_is_excused(line) if {
	some signal in data.data.dates.excused
	facts.said(line, signal)
}

_who(line) := facts.main_items(line)[0].text

default _who(_) := "this row"
