# METADATA
# title: Climate zone of the energy codes
# description: |
#   The zone that a note states, else the zone by the degree days of the station's twelve monthly means.
package lib.zone

import data.lib.words

# here is {"zone": 6, "key": "6", "says", "stated", "related"}; undefined where neither notes nor station tell it.
here := stated[0] if {
	stated := [_of_note(note) | some note in input.project.notes; _of_note(note)]
	count(stated) > 0
} else := by_months(input.profiles[_first].result.conditions.out_c)

_of_note(note) := {"zone": zone, "key": key, "says": says, "stated": true, "at": note.at, "text": note.text} if {
	found := regex.find_all_string_submatch_n(data.vapor.zones.words, lower(note.text), 1)
	zone := to_number(found[0][1])
	key := _key(zone, found[0][2] == "c")
	says := sprintf("climate zone %s%s", [found[0][1], upper(found[0][2])])
}

# by_months tells the zone from twelve means in °C, January first.
by_months(means) := {"zone": zone, "key": _key(zone, _is_marine(zone, means)), "says": says, "stated": false} if {
	count(means) == 12
	cold := sum([d | some m, c in means; d := data.vapor.zones.days[m] * max([0, 18 - c])]) * data.vapor.zones.share
	hot := sum([d | some m, c in means; d := data.vapor.zones.days[m] * max([0, c - 10])]) * data.vapor.zones.share
	zone := _zone(cold, hot)
	says := sprintf("climate zone %s by the station's months", [words.number(zone)])
}

_first := min([i | some i, profile in input.profiles; count(profile.result.conditions.out_c) == 12])

_zone(_, hot) := [one.zone | some one in data.vapor.zones.hot; hot > one.cdd10][0]

_zone(cold, hot) := zone if {
	count([one | some one in data.vapor.zones.hot; hot > one.cdd10]) == 0
	zone := _by_cold(cold)
}

_by_cold(cold) := [one.zone | some one in data.vapor.zones.cold; cold > one.hdd18][0]

_by_cold(cold) := data.vapor.zones.mild if {
	count([one | some one in data.vapor.zones.cold; cold > one.hdd18]) == 0
}

_is_marine(zone, means) if {
	zone == data.vapor.zones.marine.zone
	min(means) > data.vapor.zones.marine.coldest_c
	max(means) < data.vapor.zones.marine.warmest_c
}

default _is_marine(_, _) := false

# Of the marine zones only 4C has rows of its own.
_key(zone, true) := "4C" if zone == 4

_key(zone, marine) := sprintf("%d", [zone]) if not _is_4c(zone, marine)

_is_4c(4, true) := true

# is_of_code: the table is of the codes of these countries, or the notes state a zone of it.
is_of_code if here.stated

is_of_code if object.get(input.project, ["place", "country"], "") in data.vapor.zones.countries
