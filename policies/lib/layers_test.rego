package lib.layers_test

import data.lib.desk_test as desk
import data.lib.layers

# Layers are numbered from nought or from one, and with noughts before.
test_numbers[name] if {
	some name, want in {"0": 0, "00": 0, "07": 7, "10": 10}
	day := {"install": {"state": "day", "from": "2026-05-04"}}
	row := desk.row(12, "FM-1", {"order": name, "mark": "W1", "dates": day})
	found := layers.sheets with input as desk.document([row], [], [])
	[layer.order | some layer in found] == [want]
}
