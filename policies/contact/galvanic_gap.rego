# METADATA
# title: Metals far apart in the galvanic table
# description: |
#   Where the table of pairs knows nothing of two metals, the gap of their anodic index is a reason to look, and
#   no more: it ranks stainless on aluminum worse than the trade does. A couple with a real gap, kept wet, shows
#   rust stains or white salts at the joint by its second year. It does not apply to painted and anodized faces,
#   to metals that only stand near each other, nor where a judgement of the pair exists.
# custom:
#   id: contact-metals-gap
#   topic: contact
#   severity: warning
#   reason: Metals far apart in the galvanic series form a strong couple when wet.
#   remedy: Part them with a non-absorbent strip, sleeve the fasteners, or show that the couple is accepted.
#   source: public anodic index tables after a federal specification on intermetallic couples
#   basis: source-read
#   example: "material: zinc die-cast bracket; touches: bronze plate"
package contact.galvanic_gap

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.verdict
import data.lib.words

findings contains finding.at(line, {contact.at.cell}, _message(contact, gap)) if {
	some contact in facts.live_contacts
	contact.kind == "direct"
	gap := abs(_index[contact.a.family] - _index[contact.b.family])
	not facts.has_key(contact.a, data.contact.environment.isolated_keys)
	not facts.has_key(contact.b, data.contact.environment.isolated_keys)
	line := facts.lines_by_id[contact.line]
	gap > _bearable(line)
	verdict.is_unknown(contact)
}

_bearable(line) := data.contact.environment.indoor.gap_v if {
	some signal in data.contact.environment.indoor.signals
	facts.said(line, signal)
} else := data.contact.environment.outdoor.gap_v

_index := {family: metal.index_v |
	some metal in data.knowledge.galvanic.index
	some family in metal.families
}

_message(contact, gap) := naming.say("%s touches %s, %s V apart in the galvanic table, and nothing parts them", [
	naming.plain(contact.a),
	naming.plain(contact.b),
	words.number(gap),
])
