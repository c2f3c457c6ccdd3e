# METADATA
# title: Insulation outside of filled studs by the code's table
# description: |
#   The least continuous insulation that the code's table has outside of a filled stud wall.
package lib.ratio

import data.lib.measure
import data.lib.zone

# needed gives R (ft²·°F·h/Btu) for the class inside ("II" or "III") at the zone; filled is the layer between the studs.
needed(class, filled) := data.vapor.ratio[class].zones[zone.here.key][_column(filled)]

# is_short: the resistance outside (m²·K/W) is less than the table has by more than the rounding of figures.
is_short(outside_r, class, filled) if {
	outside_r * data.vapor.ratio.r_si < needed(class, filled) * data.vapor.ratio.short_share
}

# Thick stud walls need more outside; a thickness that is not told counts as thin.
_column(layer) := 1 if {
	is_number(layer.thickness_mm)
	layer.thickness_mm > data.vapor.ratio.studs_mm
} else := 0

# outside sums the resistance (m²·K/W) of what insulates outside of layer i; undefined where one is not known.
outside(layers, i) := sum([layer.r | some layer in outer]) if {
	outer := [layer | some j, layer in layers; j > i; layer.insulates]
	every layer in outer { is_number(layer.r) }
}

# written says a resistance (m²·K/W) as R-20, or as RSI where the author's own words are in SI units.
written(r, true) := sprintf("RSI %s", [measure.number(r)])

written(r, false) := sprintf("R-%s", [measure.number(r * data.vapor.ratio.r_si)])

# stated is the resistance (m²·K/W) that small letters tell: "RSI 3.5", "R-20". That of an inch is that of no board.
stated(text) := to_number(found[0][1]) if {
	found := regex.find_all_string_submatch_n(data.vapor.share.rsi, text, 1)
	found[0][2] == ""
} else := to_number(found[0][1]) / data.vapor.ratio.r_si if {
	found := regex.find_all_string_submatch_n(data.vapor.share.r, text, 1)
	found[0][2] == ""
}
