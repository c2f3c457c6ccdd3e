# METADATA
# title: Standard grade where the notes ask for the winter one
# description: |
#   The notes ask for the winter grade of a sheet between two days of the year, the product data has one, and a row
#   of those days takes the standard grade. Its mean days may be mild enough; the cold mornings, for which the note
#   was written, are not. It does not apply on days outside of those, to sheets that are sold in no such grades or to
#   those for under hot metal, to heated work, nor where the row is told of as too cold by the odds.
# custom:
#   id: temperature-grade-season
#   topic: temperature
#   severity: warning
#   reason: On the cold mornings of that season the standard compound does not flow into the face of the wall.
#   remedy: Take the winter grade with the primer that its data asks for, or move the work out of those days.
#   source: the project's notes
#   basis: source-read
#   example: "standard SBS sheet on 28 Oct; notes: winter grade 15 Oct to 15 Apr"
#   looks: across rows
package temperature.grade_season

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.odds
import data.lib.words

findings contains found if {
	count(_asked) > 0
	some line in facts.live_lines
	item := facts.main_items(line)[0]
	item.family in data.temperature.families
	not facts.has_key(item, data.temperature.season.winter_keys)
	winter := _winter[item.family][0]
	set := line.dates.install
	set.from != "" # a day that cannot be has none
	season := [one | some one in _asked; _is_within(_day(set.from), one)][0]
	not odds.is_heated(line)
	not line.id in {cold.line | some cold in data.temperature.cold_sheet.findings}
	message := naming.say("%s is set on %s, when the notes ask for the winter grade (%s); the product data has %s", [
		naming.plain(item),
		set.text,
		words.quoted(season.text),
		winter,
	])
	found := finding.at_with(line, ["material", "tag", "install"], message, {
		"related": [finding.related_address(season.at, season.text)],
	})
}

# The sheets of the product data that are of a winter grade, by their family.
_winter := {family: tags |
	some family in data.temperature.families
	tags := [product.tag |
		some product in input.products
		product.family == family
		some key in product.keys
		key in {"grade-low-temp", "grade-extra-low"}
	]
	count(tags) > 0
}

_asked := array.concat(_asked_as("month_first", [1, 2, 3, 4]), _asked_as("day_first", [2, 1, 4, 3]))

# The groups of the pattern are the word that denies, and then two days with their months in one order or the other.
_asked_as(form, order) := [{"from": from, "to": to, "text": trim_suffix(found[0], "."), "at": note.at} |
	rules := data.temperature.season
	pattern := sprintf(rules.asked, [rules.named, rules[form]])
	some note in input.project.notes
	some found in regex.find_all_string_submatch_n(pattern, note.text, -1)
	found[1] == ""
	from := (rules.months[lower(found[order[0] + 1])] * 100) + to_number(found[order[1] + 1])
	to := (rules.months[lower(found[order[2] + 1])] * 100) + to_number(found[order[3] + 1])
]

# 2027-10-25 is 1025.
_day(date) := (to_number(substring(date, 5, 2)) * 100) + to_number(substring(date, 8, 2))

_is_within(day, season) if {
	season.from <= season.to
	season.from <= day
	day <= season.to
}

# Winter goes over the end of the year.
_is_within(day, season) if {
	season.from > season.to
	day >= season.from
}

_is_within(day, season) if {
	season.from > season.to
	day <= season.to
}
