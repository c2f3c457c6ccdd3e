package lib.air_test

import data.lib.air
import data.lib.desk_test as desk

test_strictest_of_the_project if {
	limits := [desk.limit("air_lsm2", null, 0.02, {}), desk.limit("air_lsm2", null, 0.01, {})]
	row := desk.row(12, "AB-1", {})
	air.limit(row, [], "membrane").lsm2 == 0.01 with input as desk.document([row], [], limits)
}

test_mistaken if {
	air.mistaken(0.05, {"lsm2": 0.02}) == ""
	air.mistaken(0.2, {"lsm2": 0.02}) != ""
	air.mistaken(0.2, {"lsm2": 0.01}) == ""
}
