# METADATA
# title: Coal tar against asphalt, rubber, foam or sealant
# description: |
#   Coal tar looks like asphalt and is another chemistry: aromatic, oily, a solvent for most of what a wall is
#   built of. Stuck to old pitch an asphaltic strip turns to soup or to glass within a few summers; vinyl, EPDM
#   and foam fare worse. Take the pitch off, or part the two with metal or a sheet listed for it. It does not
#   apply to "tar paper", which is asphalt felt, nor to words that say coal-tar-free.
# custom:
#   id: contact-coal-tar
#   topic: contact
#   severity: error
#   reason: Coal tar and asphalt exchange oils; one hardens and the other runs. Its oils swell rubber and dissolve foam.
#   remedy: Take the coal tar off, or stop short of it with a metal flashing set in a sealant that bears both.
#   source: roofing association magazine on chemical considerations; common practice
#   basis: common-practice
#   example: "substrate: old coal-tar dampproofing, left in place; material: SBS self-adhered strip"
package contact.coal_tar

import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("coal_tar")

_message(contact) := hit.touch(contact, _other(ends.other), naming.noun(ends.one, "coal-tar")) if {
	ends := hit.ends(contact, ["coal-tar"])
}

_other(end) := naming.noun(end, "asphaltic") if {
	"asphaltic" in end.keys
} else := naming.plain(end)
