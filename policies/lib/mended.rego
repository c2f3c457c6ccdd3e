# METADATA
# title: What a row tells and does not put right
# description: |
#   The words by which a row tells of a fault, unless the same cell says that it was mended: "tear at the jamb, patched
#   the same day". Words that deny the mending ("not patched") leave it open.
package lib.mended

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

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
	regex.match(_mended, regex.replace(regex.replace(rest, _undone, ""), _pending, ""))
}

_mended := sprintf(`\b(?:%s|%s)\b`, [data.lib.put_right.verbs, data.lib.put_right.settled])

# "not yet patched": up to two words may stand between the two.
_undone := sprintf(`\b(?:%s)\b\W*(?:\w+\W+){0,2}?(?:%s)\b`, [data.lib.put_right.denied, data.lib.put_right.verbs])

_pending := sprintf(`\b(?:%s)\b`, [data.lib.put_right.pending])

# told is the finding on a row for the first words of a signal that its cell does not put right; says has a %s for
# the row and one for those words.
told(line, id, says) := finding.at(line, ["material", "tag", first.slot, first.at.cell], message) if {
	first := open(line, id)[0]
	message := naming.say(says, [naming.row(line), words.quoted(first.text)])
}
