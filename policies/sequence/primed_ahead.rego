# METADATA
# title: Primed days before the sheet
# description: |
#   Primer that stands overnight gathers dust and dew and loses its tack; the sheet sticks to the dust and lets go
#   within two years. Where the notes, the product's data or the row ask for the same day, dates that lie apart
#   are an error; else it is asked about, as words without dates always are, since some acrylic primers stay open
#   for longer. It does not apply where the face is primed again on the day.
# custom:
#   id: sequence-primed-ahead
#   topic: sequence
#   severity: error
#   reason: Primer left overnight loses its tack and gathers dust, and the sheet sticks to the dust.
#   remedy: Prime no more than is covered the same day, or prime again on the day of the sheet.
#   source: the project's notes or the product's data; else common practice
#   basis: common-practice
#   example: "Prime Fri 30 Apr, sheet Mon 3 May; PR-2 is to be covered the same day"
package sequence.primed_ahead

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.naming
import data.lib.primer
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	told := _told(line)
	not _is_primed_again(line)
	asked := _asked(line)
	message := naming.say("%s %s; %s", [_name(line), told.words, asked.says])
	found := finding.at_with(line, array.concat(["primer", "prime", "install"], told.cells), message, {
		"severity": _milder(asked.severity, told),
		"related": asked.related,
	})
}

_told(line) := {"words": written, "cells": [c | c := line.dates.prime.at.cell], "is_dated": true} if {
	span := line.spans.prime_gap_days
	span.min >= data.sequence.prime.usual_days
	written := sprintf("goes on %s before the sheet (%s)", [words.days(span.min), words.span(span)])
} else := {"words": written, "cells": [said.at.cell], "is_dated": false} if {
	not line.spans.prime_gap_days
	facts.said(line, "primed_ahead")
	said := [s | some s in line.signals; s.id == "primed_ahead"][0]
	written := sprintf("goes on ahead of the sheet (%s)", [words.quoted(said.text)])
}

# The strictest that speaks: the notes, the data of primer or sheet, the row; else the usual rule.
_asked(line) := {"says": "the notes ask for the same day", "severity": "error", "related": [note]} if {
	limit := _notes(line)[0]
	note := finding.related_address(limit.at, limit.text)
} else := {"says": says, "severity": "error", "related": [related]} if {
	product := _products(line)[0]
	says := sprintf("the data of %s asks for the same day", [product.id])
	related := finding.related_product(product, ["remark", "primer"], "asks for the same day")
} else := {"says": "the row asks for the same day", "severity": "error", "related": []} if {
	facts.said(line, "same_day")
} else := {"says": "primer is usually covered the same day", "severity": "warning", "related": []} if {
	not facts.said(line, "primed_earlier")
}

_notes(line) := [limit |
	keys := {key | some item in line.items; some key in item.keys}
	some role in ["primer", line.role]
	some limit in limits.limits_for("same_day", line, keys, role)
]

_products(line) := [product |
	some item in array.concat(primer.named(line), facts.main_items(line))
	product := facts.product_of(item)
	facts.said(product, "same_day")
]

_is_primed_again(line) if {
	some text in line.texts
	regex.match(data.sequence.prime.again, lower(text))
	not regex.match(data.sequence.prime.not_again, lower(text))
}

# Words without dates are asked about.
_milder(severity, told) := severity if told.is_dated

_milder(_, told) := "warning" if not told.is_dated

_name(line) := sprintf("primer %s", [item.text]) if {
	item := primer.named(line)[0]
	not regex.match(`(?i)prim`, item.text)
} else := primer.named(line)[0].text if {
	primer.named(line)[0]
} else := "the primer"
