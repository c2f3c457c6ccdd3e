# METADATA
# title: Covered before it was looked at
# description: |
#   The row says that the work was closed in before its inspection or test. Nobody has seen what is behind the brick,
#   and nothing can be mended there without taking it off. It does not apply where the row's dates tell it already, nor
#   where the work was opened up again.
# custom:
#   id: sequence-told-cover
#   topic: sequence
#   severity: warning
#   reason: What was closed in unseen can be neither judged nor mended.
#   remedy: Open it where the consultant asks, inspect and test it, and close it again; keep the photographs.
#   source: "common practice: air and water barriers are inspected and tested before they are covered"
#   basis: common-practice
#   example: "Remark: brick was up before the inspection"
package sequence.told_cover

import data.lib.facts
import data.lib.mended

findings contains mended.told(line, "covered_early", "%s is closed in before its inspection or test (%s)") if {
	some line in facts.live_lines
	not _is_dated(line)
}

_is_dated(line) if line.spans.unseen_days.max < 0
