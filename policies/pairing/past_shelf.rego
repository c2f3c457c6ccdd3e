# METADATA
# title: Material past its date
# description: |
#   The row says that rolls, pails or tubes were past their date. Old primer and sealant do not cure, and old adhesive
#   has lost its tack. It does not apply to papers that have run out, nor where the material was replaced.
# custom:
#   id: pairing-past-shelf
#   topic: pairing
#   severity: warning
#   reason: Past its date the maker answers for nothing, and tack or cure may be gone.
#   remedy: Take new stock, or get the maker's letter for the batch and a pull test.
#   source: "common practice: shelf life and storage by the maker's data"
#   basis: common-practice
#   example: "Remark: primer was past its date"
package pairing.past_shelf

import data.lib.facts
import data.lib.mended

findings contains mended.told(line, "past_shelf", "%s is told to be past its date (%s)") if {
	some line in facts.live_lines
}
