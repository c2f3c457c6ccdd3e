# METADATA
# title: Concrete too young for the sheet
# description: |
#   Young concrete sheds water for weeks. Under a tight sheet it collects at the adhesive, which turns milky and
#   lets go, or blisters in the sun; after two years the sheet comes off the wall like wet paper. The age asked
#   for stands in the notes or the product's data; without either, 7 days is the least that the federal guide
#   gives. Age is a stand-in for moisture: a test may prove younger concrete dry, and cold concrete older than its
#   days. It does not apply on the day itself, which is old enough, nor where the row has no date of the concrete.
# custom:
#   id: pairing-concrete-age
#   topic: pairing
#   severity: error
#   reason: Water from young concrete collects under the sheet and breaks the bond.
#   remedy: Move the sheet to the day the concrete is old enough, or show a moisture test that the maker accepts.
#   source: the project's notes or the product's data; else the federal guide specification for sheet waterproofing
#   basis: source-read
#   example: "R-01 set on 13 Jul on concrete cast 6 Jul; the notes ask for 14 days"
package pairing.concrete_age

import data.lib.age
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	_is_asked(line)
	span := line.spans.concrete_age_days
	span.min >= 0
	not _is_other_bed(line)
	item := sheet.own(line)
	limit := age.limit(line, item)
	span.min < limit.days
	not _may_be_old(line, span, limit)
	extra := object.union({"severity": age.severity(line, span, limit), "related": age.related(limit)}, age.source(limit))
	found := finding.at_with(line, _slots, _message(item, span, limit), extra)
}

_is_asked(line) if line.role in data.pairing.chemistry.roles

# A joint is sealed when the notes or the sealant's data let it be; no age is usual.
_is_asked(line) if line.role in data.pairing.concrete_age.stated_roles

# The row's beds are all known, and none of them cures: a board that was hung the day before.
_is_other_bed(line) if {
	beds := facts.items_in(line, ["substrate"])
	count(beds) > 0
	every bed in beds {
		not bed.unknown
		bed.family != ""
		not facts.has_key(bed, data.pairing.concrete_age.bed_keys)
	}
}

# Concrete told to the month has no age to hold against a limit, unless all of the month is too late.
_may_be_old(line, span, limit) if {
	line.dates.placed.state == "span"
	span.max - span.min >= data.pairing.concrete_age.month_days
	span.max >= limit.days
}

_slots := ["material", "substrate", "install", "placed", "age", "concrete_age"]

_message(item, span, limit) := naming.say("%s goes on concrete that is %s old%s; %s", [
	naming.plain(item),
	_age(span),
	_between(span),
	limit.says,
])

_between(span) := sprintf(" (placed %s, sheet %s)", [words.date(span.from), words.date(span.to)]) if {
	span.from != ""
} else := ""

_age(span) := words.days(span.min) if {
	span.min == span.max
} else := sprintf("%d to %d days", [span.min, span.max])
