package vapor.humid_room_test

import data.lib.desk_test as desk
import data.vapor.humid_room

_found(family, says, texts) := found if {
	product := desk.product("VF-3", 5, {"family": family, "texts": {"suits": says}})
	item := object.union(desk.own(12, "VF-3"), {"family": family})
	row := desk.row(12, "VF-3", {"items": [item], "texts": texts})
	found := humid_room.findings with input as desk.document([row], [product], [])
}

test_whole_finding if {
	found := _found("polyethylene-sheet", "Taped. Not in humid rooms", {"place": "Sauna, north wall"})
	{f.severity | some f in found} == {"error"}
	every f in found {
		endswith(f.message, `goes at a humid room ("Sauna, north wall"); its data says "Not in humid rooms"`)
	}
}

test_fires[name] if {
	some name, case in {
		"kind named by the data": ["never at natatoriums or laundries", {"place": "Hotel laundry"}],
		"told by the air of the room": ["no wet rooms", {"touches": "room kept at 65 % RH"}],
	}
	count(_found("membrane", case[0], case[1])) == 1
}

test_responsive_film_is_asked if {
	{f.severity | some f in _found("vapor-retarder-smart", "", {"place": "Swimming pool, east"})} == {"warning"}
}

test_silent[name] if {
	some name, case in {
		"another kind": ["membrane", "not for saunas", {"place": "Hotel laundry"}],
		"beside": ["membrane", "not for humid rooms", {"place": "Office next to the swimming pool"}],
		"plant of the pool": ["membrane", "not for pools", {"place": "Pool plant room"}],
		"no bar": ["membrane", "for pools and humid rooms", {"place": "Swimming pool"}],
		"responsive in a laundry": ["vapor-retarder-smart", "", {"place": "Laundry"}],
		"air on the day": ["membrane", "no wet rooms", {"remark": "88 % RH at start"}],
		"dry room": ["membrane", "no wet rooms", {"place": "Offices"}],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
