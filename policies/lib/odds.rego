# METADATA
# title: Season odds
# description: |
#   Which temperature limits of a row the season breaks, and how badly. Heat and a tent end the question; mid-day work
#   is held against the days that have a usable spell; shade and an early start count as colder. What lies on the bed
#   of a heated row and is done in the same month is in the same heat.
package lib.odds

import data.lib.facts
import data.lib.thermometer

# cold is the worst of the checks of some roles that the cold breaks: {"check", "level", "weight"}; undefined without.
cold(window, roles) := worst if {
	top := max([b.weight | some b in _broken(window); b.check.role in roles])
	worst := [b | some b in _broken(window); b.check.role in roles; b.weight == top][0]
}

# _broken lists the checks of a window that the cold breaks, of all roles: several rules ask for each.
_broken(window) := [{"check": check, "level": level, "weight": weight} |
	line := facts.lines_by_id[window.line]
	not is_heated(line)
	not thermometer.reading(line)
	some check in window.checks
	check.bound == "apply_min_c"
	not thermometer.is_for_shop(check.limit_text)
	not _is_read_warm(line, check)
	weight := _weight(line, check)
	level := _level(line, check, _raw(window, check, weight))
	level != "none"
]

# A range was read, and all of it was warm enough.
_is_read_warm(line, check) if thermometer.lowest(line).c >= check.limit_c - data.temperature.reading.tolerance_k

# sheet is cold for the row's own sheet where its limit is stated or its grade is named.
sheet(window) := found if {
	found := cold(window, data.temperature.roles.sheet)
	is_graded(found.check)
}

# primer is cold for the primer of the row.
primer(window) := cold(window, ["primer"])

# is_graded: the workbook says how cold the material may be put on, by a figure or by the name of a grade whose usual
# figure was taken.
is_graded(check) if check.stated

is_graded(check) if facts.has_key(check, ["grade-standard"])

is_graded(check) if {
	facts.has_key(check, data.temperature.grade_keys)
	check.limit_c < 0
}

# is_heated: the work is said to be heated, for the row or the whole job, and nothing denies it.
is_heated(line) if {
	facts.said(line, "heated")
	not facts.said(line, "unheated")
}

is_heated(line) if {
	_project_heats
	not facts.denied(line, "heated")
	not facts.said(line, "unheated")
}

# "Topping as F-01", and F-01 is heated: one floor, in one room.
is_heated(line) if {
	text := lower(object.get(line.texts, "substrate", ""))
	regex.match(data.temperature.cold.same_bed, text)
	_says_no_heat_of_its_own(line)
	some other in facts.live_lines
	other.table == line.table
	other.mark != ""
	other.id != line.id
	facts.said(other, "heated")
	not facts.said(other, "unheated")
	_is_of_bed(text, lower(other.mark))
	substring(other.dates.install.from, 0, 7) == substring(line.dates.install.from, 0, 7)
}

_says_no_heat_of_its_own(line) if {
	not facts.denied(line, "heated")
	not facts.said(line, "unheated")
}

_is_of_bed(text, mark) if {
	some said in regex.find_all_string_submatch_n(data.temperature.cold.same_bed, text, -1)
	startswith(said[1], mark)
	not regex.match(`^[\pL\d]`, trim_prefix(said[1], mark))
}

# Heated offices are no heated work: the notes must tell of a tent or of heat brought for the work, and not only that
# it may be.
_project_heats if {
	facts.project_said("heated")
	some signal in input.project.signals
	signal.id == "heated"
	regex.match(data.temperature.cold.work_heat, lower(signal.text))
	not _is_only_allowed(signal)
}

# "Heated tent accepted with log", "below that in a heated enclosure only": what rows may do, and say where they do.
_is_only_allowed(signal) if {
	some note in input.project.notes
	note.at == signal.at
	said := [sentence |
		some sentence in regex.split(data.temperature.cold.sentences, lower(note.text))
		contains(sentence, lower(signal.text))
	]
	count(said) > 0
	every sentence in said { regex.match(data.temperature.cold.heat_allowed, sentence) }
}

# A usual figure is asked about; a reading of the wall before work is one step milder.
_level(line, _, "warning") := "none" if _is_checked(line)

_level(line, _, "warning") := "warning" if not _is_checked(line)

_level(line, check, "error") := "warning" if {
	_is_soft(line, check)
} else := "error"

_is_soft(line, _) if _is_checked(line)

_is_soft(_, check) if not check.stated

_is_checked(line) if facts.said(line, "surface_checked")

# _raw is undefined where the season keeps the limit.
_raw(window, check, weight) := "error" if {
	weight >= band(check).error
	check.days_usable <= data.temperature.cold.usable_days
} else := "warning" if {
	weight >= band(check).warning
}

else := "warning" if below_month(window, check)

# band holds the shares that are too much for a limit, or for a grade with it.
band(check) := [band | some band in data.temperature.cold.bands; check.limit_c > band.above_c][0]

_weight(line, check) := 1 - check.days_usable if {
	is_mid_day(line)
} else := min([1, check.share_below + data.temperature.cold.early_share]) if {
	_is_early(line)
} else := check.share_below

_is_early(line) if {
	some signal in ["morning_work", "shaded"]
	facts.said(line, signal)
}

# The notes let the coldest reading of the day decide, and not that of the hours in which the crew works.
_is_early(_) if facts.project_said("coldest_counts")

# below_month: the notes let the usual low of the month decide, and that of each month of the window is below the limit.
# Work in the warm hours is held against those.
below_month(window, check) if {
	facts.project_said("month_low_counts")
	check.stated
	not is_mid_day(facts.lines_by_id[window.line])
	lows := month_lows(window)
	count(lows) > 0
	every low in lows { low < check.limit_c - data.temperature.reading.tolerance_k }
}

# month_lows are the mean lows of the months in which the window begins and ends; none where the place is not known.
month_lows(window) := [month.mean_min_c |
	some n in {to_number(substring(day, 5, 2)) | some day in [window.from, window.to]}
	month := object.get(input.project, ["place", "months"], [])[n - 1]
]

# is_mid_day: the work is said to be done in the warm hours.
is_mid_day(line) if facts.said(line, "mid_day")
