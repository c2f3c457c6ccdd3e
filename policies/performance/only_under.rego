# METADATA
# title: Another sheet than the notes allow under metal
# description: |
#   The notes name the one sheet that may lie under metal copings, caps or roofs, as a rule that of high temperature,
#   and the row has another there. It does not apply to rows that name no such metal, nor where something parts the
#   two.
# custom:
#   id: performance-only-under
#   topic: performance
#   severity: error
#   reason: Metal in the sun heats what lies under it, and the project picked the sheet that bears it.
#   remedy: Take the sheet that the notes name, or ask whoever wrote them.
#   source: the notes of this workbook
#   basis: source-read
#   example: "notes: under metal caps only HT-2; row: FM-1 under a zinc cap"
package performance.only_under

import data.lib.facts
import data.lib.finding
import data.lib.hot_cover
import data.lib.naming
import data.lib.sheet
import data.lib.words

findings contains found if {
	some asked in _asked
	some line in sheet.lines
	item := facts.main_items(line)[0]
	item.product != ""
	not item.product in asked.products
	cover := [c | some c in hot_cover.any(line); regex.match(asked.noun, lower(c.text))][0]
	message := naming.say("%s lies under %s, where the notes %s %s", [
		naming.plain(item),
		words.quoted(cover.text),
		asked.says,
		concat(" or ", sort(asked.products)),
	])
	found := finding.at_with(line, ["material", "tag", cover.slot], message, {
		"related": [finding.related_address(asked.note.at, asked.note.text)],
	})
}

# What each note asks for: the products, and the metal that they lie under.
_asked := [{"note": note, "products": products, "noun": noun, "says": object.get(pattern, "says", "allow only")} |
	count(input.products) > 0
	some note in input.project.notes
	some pattern in data.performance.only.patterns
	some found in regex.find_all_string_submatch_n(pattern.words, note.text, -1)
	noun := sprintf(`\b%s`, [trim_suffix(lower(found[pattern.noun]), "s")])
	products := {product.id |
		some product in input.products
		product.tag in regex.split(`[\s,;/&+.]+`, found[pattern.tags])
	}
	count(products) > 0
]
