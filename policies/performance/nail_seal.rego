# METADATA
# title: Seal around fasteners fails or is not shown
# description: |
#   Brick ties, furring and girts are screwed through the sheet, a thousand to a floor. Thick asphaltic sheet closes
#   around a screw, thin acrylic and permeable sheet often does not, and water follows the thread: two years later
#   rust runs from every tie and the sheathing is soft behind. Where the notes ask for the nail test, or the row
#   shows fasteners, a sheet whose data says that it fails, or tells of no such test while the data of others does,
#   is asked about. It does not apply where no data tells of the test, where the fasteners are sealed or gasketed,
#   nor to sheets that nothing goes through.
# custom:
#   id: performance-nail-seal
#   topic: performance
#   severity: warning
#   reason: A sheet that does not close around a screw leaks at each one.
#   remedy: Take a sheet that passes ASTM D1970 or AAMA 711, or seal or gasket each fastener as its maker asks.
#   source: ASTM D1970 nail sealability, AAMA 711 and 714 fastener seal; as told by articles
#   basis: source-read
#   example: "AB-3: nail sealability D1970: fail; row: brick ties through the sheet"
package performance.nail_seal

import data.lib.finding
import data.lib.sheet
import data.lib.uses
import data.lib.words

findings contains found if {
	some product in input.products
	lack := _lack(product)
	used := [use | some use in uses.main(product); sheet.chemistry(use.item) in data.performance.nail.chemistries]
	count(used) > 0
	why := _why(used)
	found := finding.for_product(product, lack.slots, _message(product, why, lack), {
		"severity": _severity(why, lack),
		"related": array.concat(uses.related(why.uses, 0), why.notes),
	})
}

# A failed test speaks for itself; a missing one only beside others that have it.
_lack(product) := {"kind": "fails", "says": sprintf("its data says %s", [words.quoted(text)]), "slots": [slot]} if {
	failing := [[slot, text] |
		some slot, text in product.texts
		regex.match(data.performance.nail.fails, lower(text))
	]
	[slot, text] := failing[0]
} else := {"kind": "untold", "says": _untold, "slots": ["material", "tag"]} if {
	count(_tested) > 0
	not product.id in _tested
}

_untold := "its data tells of no such test, and that of others does"

_tested := {product.id |
	some product in input.products
	some text in product.texts
	regex.match(data.performance.nail.test, lower(text))
}

# Fasteners in the row tell more than the notes.
_why(used) := {"kind": "row", "uses": pierced, "notes": []} if {
	pierced := [use | some use in used; _is_pierced(use.line)]
	count(pierced) > 0
} else := {"kind": "note", "uses": used, "notes": [finding.related_address(note.at, note.text)]} if {
	note := _asks[0]
}

_asks := [note |
	some note in input.project.notes
	text := lower(note.text)
	regex.match(data.performance.nail.test, text)
	regex.match(data.performance.nail.ask, text)
	not regex.match(data.performance.nail.not_asked, text)
]

_is_pierced(line) if {
	some slot in data.performance.nail.slots
	text := lower(line.texts[slot])
	regex.match(data.performance.nail.through, text)
	not regex.match(data.performance.nail.not_through, text)
}

_severity(why, lack) := "error" if {
	lack.kind == "fails"
} else := "warning" if {
	why.kind == "note"
} else := "note"

_message(product, why, lack) := sprintf("fasteners go through %s in %s, but %s", [
	product.tag,
	words.counted(count(why.uses), "row", "rows"),
	lack.says,
]) if {
	why.kind == "row"
} else := sprintf("the notes ask for a seal around fasteners at %s, but %s", [product.tag, lack.says])
