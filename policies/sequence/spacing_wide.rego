# METADATA
# title: Fasteners or weeps too far apart
# description: |
#   A termination bar presses only where it is fastened, and water on a flashing leaves only at a weep. The row's
#   spacing is above the figure that the notes state for it; without one, bars above 12 in (305 mm) and weeps above 33
#   in (838 mm) are asked about. It does not apply to fasteners of what is no bar, to heights and widths, nor to a
#   spacing within rounding of the figure.
# custom:
#   id: sequence-spacing-wide
#   topic: sequence
#   severity: error
#   reason: Between fasteners a bar bows off the sheet, and between weeps water stands on the flashing.
#   remedy: Put the fasteners or weeps as close as the notes ask, or bring the designer's answer for a wider spacing.
#   source: the project's notes; else building code for weeps in brick (33 in) and common practice for bars
#   basis: common-practice
#   example: "bar screwed 18 in. on center; the notes ask for 8 in. at most"
package sequence.spacing_wide

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	some kind, rules in data.sequence.spacing.kinds
	figure := line.figures[kind]
	measure.is_sound(figure)
	_is_of(kind, line, figure)
	of := _of(line)
	need := _need(kind, rules, line, of)
	measure.high(figure) > need.mm * (1 + data.sequence.spacing.share)
	message := naming.say("the %s%s are %s apart; %s %s", [
		rules.name,
		of.says,
		measure.written(measure.high(figure), "length", figure),
		need.says,
		measure.written(need.mm, "length", figure),
	])
	found := finding.at_with(line, [figure.at.cell], message, {"severity": need.severity, "related": need.related})
}

# A row may be that of the weeps themselves, which are no material that touches another.
_of(line) := {"says": sprintf(" of %s", [naming.plain(item)]), "keys": item.keys} if {
	item := facts.main_items(line)[0]
} else := {"says": "", "keys": []} if {
	facts.said(line, "weeps")
}

_need(kind, _, line, of) := {
	"mm": limit.max,
	"says": "the notes ask for at most",
	"severity": "error",
	"related": [finding.related_address(limit.at, limit.text)],
} if {
	limit := _asked(kind, line, of)
}

_need(kind, rules, line, of) := {
	"mm": rules.most_mm,
	"says": rules.usual,
	"severity": "warning",
	"related": [],
} if {
	not _asked(kind, line, of)
}

_asked(kind, line, of) := limits.lowest_max(limits.limits_for(kind, line, of.keys, line.role))

_is_of("weep_spacing_mm", _, _)

# A bar stands in the cell of the spacing, or the row is about one.
_is_of("spacing_mm", line, figure) if {
	some slot, cell in line.cells
	cell == figure.at.cell
	regex.match(data.sequence.spacing.bar, lower(line.texts[slot]))
}

_is_of("spacing_mm", line, figure) if {
	some item in line.items
	item.at.cell == figure.at.cell
	regex.match(data.sequence.spacing.bar, lower(item.name))
}

_is_of("spacing_mm", line, _) if {
	some item in facts.main_items(line)
	regex.match(data.sequence.spacing.bar, lower(sprintf("%s %s", [item.name, item.text])))
}
