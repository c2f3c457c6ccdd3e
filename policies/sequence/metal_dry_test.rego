package sequence.metal_dry_test

import data.lib.desk_test as desk
import data.sequence.metal_dry

_row(place, remark, class) := desk.row(12, "MF-2", {
	"place": place,
	"role": "metal",
	"items": [object.union(desk.own(12, "MF-2"), {"family": "copper-sheet", "class": class})],
	"texts": {"remark": remark, "material": "MF-2"},
})

_asked := {
	"kind": "metal_bedded",
	"min": null,
	"max": null,
	"roles": [],
	"keys": [],
	"scope": "",
	"when": [],
	"text": "Bed all metal drips in sealant",
	"at": {"sheet": "N", "row": 4, "cell": "A4"},
}

_found(row, asked) := found if {
	doc := object.union(desk.document([row], [], []), {"project": {"limits": asked, "notes": []}})
	found := metal_dry.findings with input as doc
}

test_fires_in_full if {
	_found(_row("Drip at lintel", "Laid dry on the angle", "flashing-metal"), [_asked]) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": "MF-2 (rubberized-asphalt-membrane) is laid dry, with no bed under it (\"Laid dry on the angle\")",
		"severity": "error",
		"related": [{"at": _asked.at, "cells": ["A4"], "what": "Bed all metal drips in sealant"}],
	}}
}

test_other_words[remark] if {
	some remark in ["skip the mastic under it", "sets down dry", "No sealant bed below", "drip not bedded"]
	[f.severity | some f in _found(_row("Drip edge", remark, "flashing-metal"), [])] == ["warning"]
}

test_silent[name] if {
	some name, case in {
		"dry fit": [_row("Drip edge", "Set dry, then lifted and bedded", "flashing-metal"), [_asked]],
		"a dry face": [_row("Drip edge", "Set on dry substrate in mastic", "flashing-metal"), [_asked]],
		"a coping on cleats": [_row("Coping", "laid dry on cleats", "flashing-metal"), [_asked]],
		"no drip, and no note": [_row("Belt course", "laid dry", "flashing-metal"), []],
		"a cover by its data": [_named("Copper coping cover", "Ledge"), [_asked]],
		"a sheet": [_row("Drip edge", "laid dry", "membrane"), [_asked]],
		"bedded": [_row("Drip edge", "in a bed of butyl, weeps kept dry", "flashing-metal"), [_asked]],
	}
	count(_found(case[0], case[1])) == 0
}

_named(name, place) := object.union(_row(place, "laid dry", "flashing-metal"), {"items": [object.union(
	desk.own(12, "MF-2"),
	{"family": "copper-sheet", "class": "flashing-metal", "name": name},
)]})

test_a_drip_by_its_data if count(_found(_named("Copper drip edge", "Ledge"), [])) == 1
