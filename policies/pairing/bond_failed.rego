# METADATA
# title: It did not bond
# description: |
#   The row says that the sheet, primer or sealant did not stick: a pull test failed, an edge lifts, a sheet slid. It
#   will not stick later. It does not apply where the same cell says that it was done again or passed on a new test.
# custom:
#   id: pairing-bond-failed
#   topic: pairing
#   severity: error
#   reason: What does not stick when it is new lets go behind the cover.
#   remedy: Find out why (dust, damp, cold, old product), take it off there, prepare and prime anew, test the bond.
#   source: "common practice: adhesion is tested, and what fails is taken off"
#   basis: common-practice
#   example: "Remark: pull test failed at the base"
package pairing.bond_failed

import data.lib.facts
import data.lib.mended

findings contains mended.told(line, "bond_failed", "%s is told not to hold (%s)") if {
	some line in facts.live_lines
}
