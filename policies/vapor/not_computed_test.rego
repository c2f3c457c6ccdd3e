package vapor.not_computed_test

import data.lib.wall_test as wall
import data.vapor.not_computed

_found(layers, missing) := found if {
	lack := {"missing": [{"what": "thickness", "name": "batt"} | some _ in missing]}
	profile := object.union(wall.profile(layers, wall.cold, lack), {"missing": missing})
	found := not_computed.findings with input as wall.document([profile], {})
}

test_fires_in_full if {
	_found([wall.gypsum, wall.batt, wall.open_sheet], ["state its thickness"]) == {{
		"line": "W!35",
		"cells": ["C35", "L35"],
		"message": "the vapor profile of W5 was not computed, for want of the thickness of batt",
		"related": [],
	}}
}

# A section without a mark goes by its place.
test_called_by_its_place if {
	profile := object.union(wall.profile([wall.gypsum, wall.batt, wall.open_sheet], wall.cold, {}), {
		"mark": "",
		"missing": ["x"],
	})
	some found in not_computed.findings with input as wall.document([profile], {})
	not contains(found.message, "profile of  was")
}

test_tells_why_where_no_figure_is_missing if {
	profile := object.union(wall.profile([wall.gypsum, wall.batt, wall.open_sheet], wall.cold, {}), {
		"missing": ["the section has no layer inside"],
	})
	some found in not_computed.findings with input as wall.document([profile], {})
	endswith(found.message, "was not computed, since the section has no layer inside")
}

test_silent if {
	count(_found([wall.gypsum, wall.batt, wall.open_sheet], [])) == 0
	count(_found([wall.gypsum, wall.batt], ["x"])) == 0
	count(_found([wall.open_sheet], ["x"])) == 0
}
