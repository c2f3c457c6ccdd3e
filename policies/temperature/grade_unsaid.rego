# METADATA
# title: No grade given for a sheet in the cold
# description: |
#   A self-adhered sheet goes on in the cold season, and nothing in the workbook says how cold it may be put on:
#   no figure, no grade. The standard grade stops at 40 F, and that is what comes when nobody asks; two winters
#   later its laps are open. Name the grade. It does not apply to mild weeks, when nothing is asked, nor to heated
#   work.
# custom:
#   id: temperature-grade-unsaid
#   topic: temperature
#   severity: note
#   reason: Without a grade the standard one is delivered, which does not hold in the cold.
#   remedy: Name the grade, or its least application temperature, in the row or the product data.
#   source: common practice (grades of self-adhered sheet, 40, 20 and 0 F)
#   basis: common-practice
#   example: "Self-adhered SBS sheet, no grade, set on 10 Feb in Winnipeg"
package temperature.grade_unsaid

import data.lib.degrees
import data.lib.facts
import data.lib.finding
import data.lib.forecast
import data.lib.naming
import data.lib.odds
import data.lib.sheet
import data.lib.words

findings contains found if {
	some window in facts.live_windows
	line := facts.lines_by_id[window.line]
	not odds.is_heated(line)
	not odds.primer(window)
	not _is_graded(line, window)
	item := facts.main_items(line)[0]
	sheet.chemistry(item) != ""
	not facts.has_key(item, data.temperature.grade_keys)
	grade := window.grades[0]
	severity := _severity(grade)
	found := finding.at_with(line, ["material", "tag", "install"], _message(item, window, grade), {"severity": severity})
}

_is_graded(_, window) if {
	some check in window.checks
	check.bound == "apply_min_c"
	check.role in data.temperature.roles.sheet
	odds.is_graded(check)
}

_severity(grade) := "warning" if {
	grade.share_below >= odds.band(grade).error
	grade.days_usable <= data.temperature.cold.usable_days
} else := "note" if {
	grade.share_below >= odds.band(grade).warning
}

_message(item, window, grade) := naming.say("No grade is given for %s; %s%s %s of working hours are below %s, %s%s", [
	naming.plain(item),
	forecast.when(window),
	forecast.where(window),
	words.percent(grade.share_below),
	degrees.write(grade.limit_c, grade.limit_text),
	sprintf("where the %s stops", [grade.name]),
	forecast.suits(window, grade, grade.limit_text),
])
