# METADATA
# title: Two fresh chemistries side by side
# description: |
#   A fresh neutral silicone gives off alcohol that stops a fresh urethane from curing; green concrete makes a
#   urethane foam. The bead stays gum or lifts, and two years later a finger still goes into it. Let the first
#   cure before the second goes on. It does not apply once the first is cured, however long the two then touch.
# custom:
#   id: contact-fresh-beside-fresh
#   topic: contact
#   severity: warning
#   reason: What one fresh material gives off keeps the other from curing, or lifts it.
#   remedy: Let the first one cure fully before the second is applied, or use one chemistry.
#   source: common practice
#   basis: common-practice
#   example: "sealant: neutral silicone; touches: fresh polyurethane bead"
package contact.uncured

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("uncured")

_message(contact) := sprintf("%s goes on against fresh %s", [naming.plain(contact.a), naming.plain(contact.b)])
