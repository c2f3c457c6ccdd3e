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
