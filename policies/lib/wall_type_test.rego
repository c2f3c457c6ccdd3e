package lib.wall_type_test

import data.lib.desk_test as desk
import data.lib.wall_type

test_names if {
	wall_type.names({"texts": {"type": " EW-3 ", "mark": "", "place": "north"}}) == {"EW-3"}
	wall_type.names({"texts": {"type": "EW-3", "group": "Brick on light gauge studs"}}) == {"EW-3"}
	wall_type.names({"texts": {}}) == set()
	wall_type.names({"texts": {"tag": "sixteen letters."}}) == {"sixteen letters."}
	wall_type.names({"texts": {"tag": "seventeen letters"}}) == set()
}

# A list may head its codes "Type"; a description under that heading is no code.
test_of_a_list_by_type[name] if {
	some name, case in {
		"code": {"type": "EW-3", "n": 1},
		"another": {"type": "EW-4", "n": 0},
		"description": {"type": "brick on studs", "n": 0},
	}
	row := object.union(desk.row(23, "R-01", {"group": "EW-3"}), {"place": "north"})
	list := object.union(desk.row(40, "R-01", {}), {
		"table": "list",
		"mark": "",
		"texts": {"type": case.type, "layers": "brick / R-01 / block"},
	})
	found := wall_type.of(row) with input as desk.document([row, list], [], [])
	count(found) == case.n
	every wall in found { wall.mark == "EW-3" }
}

# A place may end in the code of its wall; of two codes neither is meant, and a room is none.
test_of_a_place_that_ends_in_the_code[place] if {
	some place, n in {"Gym wall N, EW-3": 1, "Gym wall N, EW-4": 0, "Gym to hall, EW-3/EW-4": 0, "EW-3": 0, "north": 0}
	row := object.union(desk.row(23, "R-01", {}), {"place": place})
	list := object.union(desk.row(40, "R-01", {}), {
		"table": "list",
		"mark": "",
		"texts": {"type": "EW-3", "layers": "brick / R-01 / block"},
	})
	count(wall_type.of(row)) == n with input as desk.document([row, list], [], [])
}

# The code of a wall may stand beside its place, in the one column of both.
test_code_beside_place if {
	wall_type.codes_of_group({"group": "Tower E / EW3"}) == {"EW3"}
	wall_type.codes_of_group({"group": "Tower - EW3B"}) == {"EW3B"}
	wall_type.codes_of_group({"group": "EW3"}) == set()
	wall_type.codes_of_group({"group": "Tower E / north"}) == set()
}
