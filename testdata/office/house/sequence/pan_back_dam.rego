# METADATA
# title: Sill pan without a back dam
# description: |
#   Water that gets past a window runs to the back of its pan, and without an upstand there it runs on into the room:
#   after two years the stool is swollen and the gypsum board below it is stained. Our office asks for a back dam in
#   every pan, so a row that speaks of a pan and of no back dam is asked about. It does not apply to pans by others.
# custom:
#   id: office-pan-back-dam
#   topic: sequence
#   severity: warning
#   reason: A pan without an upstand at its back leads the water into the room.
#   remedy: Turn the pan up at least 1 in (25 mm) behind the frame, and seal its corners.
#   source: common practice (this office)
#   basis: common-practice
#   example: "Sill pan, self-adhered flashing over sloped shim"
package sequence.pan_back_dam

import data.lib.facts
import data.lib.finding

findings contains finding.at(line, [slot], message) if {
	some line in facts.live_lines
	not facts.said(line, "by_others")
	some slot, text in line.texts
	_speaks_of(text, data.sequence.pan.words)
	not _has_dam(line)
	message := sprintf("%s is a sill pan, and nothing is said of a back dam", [line.mark])
}

_has_dam(line) if {
	some text in line.texts
	_speaks_of(text, data.sequence.pan.dam_words)
}

_speaks_of(text, words) if regex.match(concat("", [`(?i)\b(`, concat("|", words), `)\b`]), text)
