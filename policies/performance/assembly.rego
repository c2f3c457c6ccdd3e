# METADATA
# title: Assembly asked for, material shown (or the reverse)
# description: |
#   A sheet is tested by ASTM E2178, a wall with its laps, ties, openings and primer by E2357, at ten times the leak.
#   A report of one is no proof of the other: a tight sheet in a leaky wall shows two winters later as drafts at
#   every window, and an assembly number says nothing of the roll. Where the notes ask for the assembly and the data
#   shows materials only, where a row claims an assembly that its data does not show, or where a material limit is
#   answered with an assembly report, the other report is asked for. It does not apply to a note that leaves the
#   choice ("E2178 or E2357"), nor where nothing names either test.
# custom:
#   id: performance-air-assembly
#   topic: performance
#   severity: warning
#   reason: A material test says nothing of laps, ties and openings, and an assembly test nothing of the roll alone.
#   remedy: Ask for the report that is missing, with the same sheet, primer, tape and sealant as the row.
#   source: ASTM E2178 for materials, E2357 for assemblies, as the energy codes take them (IECC C402.5; second-hand)
#   basis: source-read
#   example: "Notes: air barrier assembly by ASTM E2357; AB-1: 0.002 cfm/ft² by E2178"
#   looks: across rows
package performance.assembly

import data.lib.air
import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.uses
import data.lib.words

# The notes ask for an assembly, and the workbook shows materials only.
findings contains finding.for_address(note.at, message, {"related": related}) if {
	note := _asks[0]
	not _shown
	count(_materials) > 0
	names := [product.tag | some product in _materials]
	message := sprintf(
		"the notes ask for a tested assembly (%s), but the data shows material tests only (%s)",
		[words.quoted(note.text), words.list(array.slice(names, 0, 4))],
	)
	related := [finding.related_product(product, ["air_test", "report"], "a material test") | some product in _materials]
}

# A row claims an assembly, and the data of its sheet shows a material.
findings contains finding.at_with(line, ["material", "tag", slot], message, {"related": related}) if {
	count(_materials) > 0
	some line in facts.live_lines
	slot := _claims(line)[0]
	item := facts.main_items(line)[0]
	product := facts.product_of(item)
	product in _materials
	message := sprintf("%s is told of as a tested assembly (%s), but its data shows a material test only", [
		item.text,
		words.quoted(line.texts[slot]),
	])
	related := [finding.related_product(product, ["air_test", "report"], "a material test")]
}

# A limit of a material is answered by an assembly report; the test cell itself is judged elsewhere.
findings contains finding.for_product(product, ["report", "remark"], message, {"related": uses.related(asked, 0)}) if {
	some product in _assemblies
	not regex.match(data.performance.assembly.test, _text(product, ["air_test"]))
	asked := [use |
		some use in uses.main(product)
		count(limits.limits_for("air_lsm2", use.line, product.keys, product.role)) > 0
	]
	count(asked) > 0
	message := sprintf("the project limits the air permeance of materials, but %s shows an assembly test only", [
		product.tag,
	])
}

_asks := [note |
	some note in input.project.notes
	text := lower(note.text)
	regex.match(data.performance.assembly.test, text)
	not regex.match(data.performance.assembly.material, text)
	not regex.match(data.performance.assembly["not"], text)
]

_shown if count(_assemblies) > 0

_shown if {
	some line in facts.live_lines
	regex.match(data.performance.assembly.test, _text(line, data.performance.assembly.slots))
}

_materials := [product |
	some product in input.products
	air.is_sheet(product, product.role)
	text := _text(product, object.keys(product.texts))
	regex.match(data.performance.assembly.material, text)
	not regex.match(data.performance.assembly.test, text)
	count(uses.main(product)) > 0
]

_assemblies := [product |
	some product in input.products
	air.is_sheet(product, product.role)
	text := _text(product, object.keys(product.texts))
	regex.match(data.performance.assembly.test, text)
	not regex.match(data.performance.assembly.material, text)
]

_claims(line) := [slot |
	some slot in data.performance.assembly.slots
	text := lower(line.texts[slot])
	_is_claim(text)
	not regex.match(data.performance.assembly["not"], text)
	not regex.match(data.performance.assembly.material, text)
]

_is_claim(text) if regex.match(data.performance.assembly.test, text)

_is_claim(text) if regex.match(data.performance.assembly.claim, text)

_text(row, slots) := lower(concat(" ; ", [text | some slot in slots; text := row.texts[slot]]))
