# METADATA
# title: Fresh silicone against fresh urethane
# description: |
#   What silicone gives off while it cures stops urethane from curing: both stay soft where they meet, and foam shot
#   over a wet bead shuts its moisture off as well. Let the one cure before the other goes on, or lay a tape between.
#   It does not apply where the row says that one of them is cured or so many days old, nor where nothing says that
#   they are fresh.
# custom:
#   id: contact-fresh-beads
#   topic: contact
#   severity: warning
#   reason: Silicone and urethane keep each other from curing while both are fresh.
#   remedy: Let the first cure as its data says before the second goes on, or part them with a tape.
#   source: sealant makers' advice on mixed joints; common practice
#   basis: common-practice
#   example: "urethane bead tooled into fresh silicone the same hour"
package contact.fresh_beads

import data.lib.facts
import data.lib.finding
import data.lib.naming

findings contains finding.at_with(line, [one.a.slot, one.b.slot], message, {"facts": [one.id]}) if {
	some line in facts.live_lines
	facts.said(line, "bead_fresh")
	one := [contact |
		some contact in input.contacts
		contact.line == line.id
		contact.kind == "direct"
		some [silicone, urethane] in [[contact.a, contact.b], [contact.b, contact.a]]
		silicone.class == "sealant"
		facts.has_key(silicone, data.contact.fresh.stops)
		urethane.class in data.contact.fresh.classes
		facts.has_key(urethane, data.contact.fresh.stopped)
	][0]
	message := naming.say("%s meets %s while both are fresh, and they keep each other from curing", [
		naming.plain(one.a),
		naming.plain(one.b),
	])
}
