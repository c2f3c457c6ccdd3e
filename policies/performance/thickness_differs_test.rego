package performance.thickness_differs_test

import data.lib.desk_test as desk
import data.performance.thickness_differs

_thick(value, text) := {"figures": {"thickness_mm": desk.figure(value, text, "")}}

_found(row, told) := found if {
	doc := desk.document([desk.row(12, "FM-1", row)], [desk.product("FM-1", 4, told)], [])
	found := thickness_differs.findings with input as doc
}

test_fires_in_full if {
	_found(_thick(1.143, "45 mil"), _thick(1.016, "40 mil")) == {{
		"line": "W!12",
		"cells": ["C12", "D12"],
		"message": "FM-1 is scheduled at 45 mil, but its data says 40 mil",
		"related": [{"product": "FM-1", "cells": ["D4"], "what": "its data"}],
	}}
}

_poured(value) := object.union(
	_thick(value, sprintf("%v mm", [value])),
	{"items": [object.union(desk.own(12, "FM-1"), {"family": "polyurethane-waterproofing"})]},
)

test_more_of_what_is_poured if {
	count(_found(_poured(2), _thick(1.5, "1.5 mm"))) == 0
	count(_found(_poured(1), _thick(1.5, "1.5 mm"))) == 1
}

_in_words(text) := object.union(_thick(0.508, "20 mil dry"), {
	"cells": {"type": "E12"},
	"texts": {"type": text},
	"figures": {"thickness_mm": object.union(desk.figure(0.508, "20 mil dry", ""), {"at": {"cell": "E12"}})},
})

test_one_coat_of_several if {
	count(_found(_in_words("field, 20 mil dry"), _thick(1.016, "40 mil"))) == 1
	count(_found(_in_words("field, two coats, 20 mil dry"), _thick(1.016, "40 mil"))) == 0
}

_two_places := {"figures": {"thickness_mm": object.union(
	desk.figure(1.5, "2.3 flat, 1.5 upright", "mm"),
	{"max": 2.3},
)}}

test_one_figure_a_place if {
	count(_found(_thick(1.5, "1.5 mm"), _two_places)) == 0
	count(_found(_thick(2.3, "2.3 mm"), _two_places)) == 0
	count(_found(_thick(1, "1 mm"), _two_places)) == 1
	count(_found(_thick(3, "3 mm"), _two_places)) == 1
}

test_silent[name] if {
	some name, case in {
		"same": {"row": _thick(1.016, "40 mil"), "told": _thick(1.016, "40 mil")},
		"printed in mm": {"row": _thick(1.1, "1.1 mm"), "told": _thick(1.143, "45 mil")},
		"thin, printed in mm": {"row": _thick(0.15, "0.15 mm"), "told": _thick(0.1524, "6 mil")},
		"thick, printed in mm": {"row": _thick(4, "4 mm"), "told": _thick(4.064, "160 mil")},
		"film over the least": {"row": _thick(0.86, "34 mils"), "told": _thick(0.762, "30 mils dry, min.")},
		"wet against dry": {"row": _thick(0.508, "20 mils wet"), "told": _thick(0.762, "30 mils dry")},
		"row is silent": {"row": {}, "told": _thick(1.016, "40 mil")},
		"data is silent": {"row": _thick(1.016, "40 mil"), "told": {}},
		"insulation": {"row": object.union(_thick(150, "150"), {"role": "insulation"}), "told": _thick(100, "100")},
		"tag told twice": {"row": _thick(1.143, "45"), "told": object.union(_thick(1.016, "40"), {"repeats": true})},
	}
	count(_found(case.row, case.told)) == 0
}

_metal(mm, told) := found if {
	row := object.union(_thick(mm, sprintf("%v mm", [mm])), {"role": "metal"})
	product := object.union(_thick(told, sprintf("%v mm", [told])), {"role": "metal"})
	found := _found(row, product)
}

test_metal_thinner_than_its_data if {
	{f.message | some f in _metal(0.4, 0.61)} == {"FM-1 is scheduled at 0.4 mm, but its data says 0.61 mm"}
	count(_metal(0.56, 0.61)) == 0
	count(_metal(0.76, 0.61)) == 0
}
