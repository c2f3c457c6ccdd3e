package lib.wall_type_test

import data.lib.wall_type

test_names if {
	wall_type.names({"texts": {"type": " EW-3 ", "mark": "", "place": "north"}}) == {"EW-3"}
	wall_type.names({"texts": {"type": "EW-3", "group": "Brick on light gauge studs"}}) == {"EW-3"}
	wall_type.names({"texts": {}}) == set()
	wall_type.names({"texts": {"tag": "sixteen letters."}}) == {"sixteen letters."}
	wall_type.names({"texts": {"tag": "seventeen letters"}}) == set()
}
