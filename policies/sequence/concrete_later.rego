# METADATA
# title: Sheet before its concrete
# description: |
#   The concrete under the sheet is placed after the sheet is to go on. One of the dates is wrong, or the
#   programme was moved for one trade only; if the sheet then goes on as soon as the forms are off, it blisters
#   within two years. The age that the concrete needs comes on top. It does not apply to ranges that overlap, nor to
#   a blindside sheet, which the concrete is poured against.
# custom:
#   id: sequence-concrete-later
#   topic: sequence
#   severity: error
#   reason: A sheet cannot be stuck to concrete that is not there, and young concrete needs days more.
#   remedy: Move the sheet past the age that the notes or the product's data ask for, or correct the date of the pour.
#   source: the row, or the sheet of pours
#   basis: source-read
#   example: "Sheet on 9 Mar, concrete ledge placed on 16 Mar"
package sequence.concrete_later

import data.lib.age
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some line in sheet.lines
	span := line.spans.concrete_age_days
	span.max < 0
	item := facts.main_items(line)[0]
	not _is_poured_against(line, item)
	message := naming.say("%s goes on %s, %s before its concrete is placed on %s%s", [
		naming.plain(item),
		words.date(span.to),
		words.days(0 - span.max),
		words.date(span.from),
		_age(line, item),
	])
	slots := ["material", "tag", "substrate", "install", "placed"]
	found := finding.at_with(line, slots, message, {"related": _pour(line)})
}

_is_poured_against(_, item) if item.family in data.sequence.blindside.families

_is_poured_against(line, item) if {
	some text in _texts(line, item)
	regex.match(data.sequence.blindside.words, text)
}

_texts(line, item) := array.concat([item.text], [text | some text in line.texts]) if {
	not facts.product_of(item)
} else := array.concat([item.text], [text |
	some texts in [line.texts, facts.product_of(item).texts]
	some text in texts
])

_age(line, item) := sprintf("; %s after that", [age.limit(line, item).says]) if {
	age.limit(line, item).from != "usual"
} else := ""

# A date taken from a sheet of pours stands in another row.
_pour(line) := [finding.related_address(at, "the concrete is placed here")] if {
	at := line.dates.placed.at
	[at.sheet, at.row] != [line.sheet, line.row]
} else := []
