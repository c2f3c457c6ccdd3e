# METADATA
# title: Face wiped with fuel or thinner
# description: |
#   The row says that the face was cleaned with kerosene, diesel, gasoline or paint thinner. They leave an oily film on
#   which neither primer nor sheet sticks, and they soften asphaltic adhesive. It does not apply where it was cleaned
#   again with a solvent that leaves nothing.
# custom:
#   id: pairing-oily-wipe
#   topic: pairing
#   severity: warning
#   reason: Fuels and thinners leave an oily film, and soften asphaltic adhesive.
#   remedy: Clean again with the cleaner that the maker names (often isopropyl alcohol), then test the bond.
#   source: "common practice: cleaners of the maker's data; no oily solvents before self-adhered sheets"
#   basis: common-practice
#   example: "Remark: face washed down with diesel"
package pairing.oily_wipe

import data.lib.facts
import data.lib.mended

findings contains mended.told(line, "oily_wipe", "The face under %s is told to be cleaned with an oily fluid (%s)") if {
	some line in facts.live_lines
}
