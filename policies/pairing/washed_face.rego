# METADATA
# title: Masonry washed just before
# description: |
#   Brick, block and stone are washed to take off dust and salts, and drink the water. The face looks dry the next
#   morning and is wet behind it: primer does not get into the pores, and a sheet shuts the water in, which lifts it in
#   the first hot week. The row tells the day of the wash, or that the work follows at once. It does not apply where
#   the row says that the face is dry or has a moisture reading, to products whose data allows a damp face, nor from
#   two days after the wash.
# custom:
#   id: pairing-washed-face
#   topic: pairing
#   severity: warning
#   reason: Washed masonry holds water behind a dry-looking face, and primer, adhesive and sealant do not wet it.
#   remedy: Leave days for drying, more in the cold, and write the moisture reading that the maker accepts into the row.
#   source: common practice; makers ask for a clean and dry face
#   basis: common-practice
#   example: "Sheet set 4 Oct on brick, hosed off 3 Oct"
package pairing.washed_face

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", "substrate", told.cell], message) if {
	some line in facts.live_lines
	told := _washed(line)
	bed := _bed(line)
	item := _stuck(line)[0]
	not _is_dry(line)
	not _bears_damp(item)
	message := naming.say("%s goes on %s that was washed %s, and nothing shows that it has dried", [
		naming.plain(item),
		bed.text,
		told.when,
	])
}

# By its day, else by words: {"cell", "when"}.
_washed(line) := {"cell": washed.at.cell, "when": _when(line.spans.drying_days)} if {
	washed := line.dates.washed
	span := line.spans.drying_days
	span.min >= 0
	span.last <= data.pairing.washed.days
} else := {"cell": said.at.cell, "when": sprintf("just before (%s)", [words.quoted(said.text)])} if {
	not line.spans.drying_days
	facts.said(line, "washed_before")
	said := [s | some s in line.signals; s.id == "washed_before"; s.slot in data.pairing.washed.told_slots][0]
}

_when(span) := sprintf("on the same day (%s)", [words.date(span.from)]) if span.last == 0

_when(span) := sprintf("the day before (%s)", [words.date(span.from)]) if span.last > 0

_bed(line) := beds[0] if {
	beds := [bed |
		some bed in facts.items_in(line, ["substrate"])
		facts.has_key(bed, data.pairing.washed.keys)
	]
}

_stuck(line) := [item |
	some slot in data.pairing.washed.slots
	some item in facts.items_in(line, [slot])
	item.class in data.pairing.washed.classes
]

_is_dry(line) if facts.said(line, "surface_dry")

_is_dry(line) if {
	facts.said(line, "moisture_tested")
	some s in line.signals
	s.id == "moisture_tested"
	regex.match(data.pairing.washed.proof_words, lower(s.text))
}

_bears_damp(item) if {
	product := facts.product_of(item)
	some text in product.texts
	regex.match(data.pairing.surface.damp_fine, lower(text))
}
