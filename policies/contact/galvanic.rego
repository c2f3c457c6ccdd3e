# METADATA
# title: Unlike metals in contact
# description: |
#   Two metals, wet, touching: the less noble one is eaten. Copper on aluminum or on zinc is the classic of the
#   wall; the galvanized angle under a copper flashing shows white rust in a season and red rust in two years. The
#   small part must be the nobler one: an aluminum rivet in stainless fails. A tape parts two metals; it does not
#   stop rain from carrying copper onto aluminum below. It does not apply to couples that the trade accepts, such
#   as stainless screws in aluminum sheet inland, nor where a strip parts the whole contact.
# custom:
#   id: contact-unlike-metals
#   topic: contact
#   severity: error
#   reason: Two metals in contact and wet form a couple, and the less noble one corrodes.
#   remedy: Part them with a non-absorbent strip over the whole contact, sleeve the fasteners, or use one metal.
#   source: metal and copper associations' handbooks; common practice
#   basis: common-practice
#   example: "material: copper flashing; substrate: galvanized shelf angle"
package contact.galvanic

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("galvanic")

_message(contact) := hit.touch(contact, naming.plain(contact.a), naming.plain(contact.b))
