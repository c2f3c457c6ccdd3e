# METADATA
# title: What a row tells and does not put right
# description: |
#   The words by which a row tells of a fault, unless the same cell says that it was mended: "tear at the jamb, patched
#   the same day". Words that deny the mending ("not patched") leave it open.
package lib.mended

import data.lib.facts

# open lists the words of a row for a signal that its cell does not put right.
open(line, id) := [s |
	facts.said(line, id)
	some s in line.signals
	s.id == id
	not s.no
	not _is_put_right(object.get(line.texts, s.slot, ""), s.text)
]

_is_put_right(text, said) if {
	rest := replace(lower(text), lower(said), "")
	regex.match(data.sequence.told.mended, regex.replace(rest, data.sequence.told.undone, ""))
}
