# METADATA
# title: Winter of the job
# description: |
#   How cold the three coldest months are at the place of the job, as far as a profile or the place tells it.
# custom:
#   looks: across rows
package lib.winter

import data.lib.words

# celsius is the mean of the three coldest months; undefined where no station is known.
celsius := told[0] if {
	told := [c | some profile in input.profiles; c := of(profile)]
	count(told) > 0
} else := sum(means) / count(means) if {
	means := [mean |
		some window in input.windows
		_is_winter(window.from)
		_is_winter(window.to)
		mean := (window.mean_min_c + window.mean_max_c) / 2
	]
	count(means) > 0
}

# Work of December to February tells the winter as well.
_is_winter(day) if substring(day, 5, 2) in {"12", "01", "02"}

# of is the same for one profile, which may count other months.
of(profile) := profile.result.share.out_c if {
	is_number(profile.result.share.out_c)
} else := sum(coldest) / 3 if {
	months := sort(profile.result.conditions.out_c)
	count(months) == 12
	coldest := array.slice(months, 0, 3)
}

# is_humid: hot and humid summers, by the notes or by the months of a profile.
is_humid if {
	some note in input.project.notes
	regex.match(data.vapor.climate.humid.words, lower(note.text))
}

is_humid if {
	some profile in input.profiles
	some month, c in profile.result.conditions.out_c
	c >= data.vapor.climate.humid.month_c
	profile.result.conditions.out_rh[month] >= data.vapor.climate.humid.month_rh
	celsius >= data.vapor.climate.warm_c
}

# written is a temperature in the unit of the job's country.
written(c) := words.temperature(c, "0 °F") if {
	object.get(input.project, ["place", "country"], "") in {"US", "USA", "United States"}
} else := words.temperature(c, "0 °C")
