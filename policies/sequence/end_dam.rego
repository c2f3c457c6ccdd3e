# METADATA
# title: Flashing without end dams
# description: |
#   A flashing that stops without an end dam pours its water into the wall beside the opening; after two winters
#   there is a damp patch and white salts at each jamb. Turn the ends up into a joint. Told where the row says
#   that there are none. It does not apply to rows that do not speak of end dams at all, as most do not, nor where
#   the ends are told to run into closed corners or soldered boxes, which do the work of dams.
# custom:
#   id: sequence-end-dam
#   topic: sequence
#   severity: warning
#   reason: Water runs off the end of the flashing into the wall beside it.
#   remedy: Turn the ends up at least 1 in (25 mm) into a head joint and seal them, or run into a closed corner.
#   source: brick-industry notes and masonry handbooks
#   basis: source-read
#   example: "Sill flashing, no end dams"
package sequence.end_dam

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains finding.at(line, ["material", "tag", said.slot, said.at.cell], message) if {
	some line in facts.live_lines
	_dams(line)
	facts.denied(line, "end_dam")
	not facts.denied(line, "ends_open")
	said := [s | some s in line.signals; s.id == "end_dam"; s.no][0]
	item := facts.main_items(line)[0]
	message := naming.say("%s ends without end dams (%s)", [naming.plain(item), words.quoted(said.text)])
}

# A pan or tray is told to run out open.
findings contains finding.at(line, ["material", "tag", "type", said.slot], message) if {
	some line in facts.live_lines
	facts.said(line, "ends_open")
	not facts.denied(line, "end_dam")
	not facts.said(line, "end_dam")
	said := [s | some s in line.signals; s.id == "ends_open"; not s.no][0]
	_is_pan(line)
	item := facts.main_items(line)[0]
	message := naming.say("%s has ends that are open (%s)", [naming.plain(item), words.quoted(said.text)])
}

_is_pan(line) if {
	some slot in ["material", "type", "place", "remark", "specified"]
	regex.match(data.sequence.dams.pan, line.texts[slot])
}

_is_pan(line) if regex.match(data.sequence.dams.pan, facts.main_items(line)[0].text)

# The tag alone does not tell what its data does: "TW | through-wall flashing".
_is_pan(line) if {
	product := facts.product_of(facts.main_items(line)[0])
	some slot in ["material", "type", "series"]
	regex.match(data.sequence.dams.pan, product.texts[slot])
}

# Metal at the sill, head or foot of an opening, or on the angle that carries the brick, is a pan or a flashing.
_is_pan(line) if {
	_is_metal(line)
	some slot in ["type", "place"]
	regex.match(data.sequence.dams.opening, line.texts[slot])
}

_is_metal(line) if line.role in data.sequence.order.metal_roles

_is_metal(line) if facts.has_key(facts.main_items(line)[0], data.sequence.dams.metals)

_dams(line) if line.role in data.pairing.chemistry.roles

_dams(line) if line.role in data.sequence.order.metal_roles

# A damp-proof course of plastic film is a flashing where it is a tray.
_dams(line) if line.role in data.sequence.dams.film_roles

# The cell of the end dam's height says none.
findings contains finding.at(line, ["material", "tag", "end_dam"], message) if {
	some line in facts.live_lines
	not facts.denied(line, "end_dam")
	words := trim_space(line.texts.end_dam)
	_says_none(trim_space(regex.split(`\s[-–—]\s|[,;:(]`, lower(words))[0]))
	item := facts.main_items(line)[0]
	message := naming.say("%s ends without end dams (the cell says \"%s\")", [naming.plain(item), words])
}

_says_none(word) if word in data.sequence.edge.none_words

_says_none(word) if word in data.sequence.dams.answers_no
