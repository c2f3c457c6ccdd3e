package lib.plausible_test

import data.lib.desk_test as desk
import data.lib.plausible

test_slip[name] if {
	some name, case in {
		"40 mm sheet": {"kind": "thickness_mm", "role": "membrane", "value": 40, "slip": true},
		"1 mm sheet": {"kind": "thickness_mm", "role": "membrane", "value": 1, "slip": false},
		"at the edge": {"kind": "thickness_mm", "role": "membrane", "value": 8, "slip": false},
		"board": {"kind": "thickness_mm", "role": "insulation", "value": 150, "slip": false},
		"any role": {"kind": "air_lsm2", "role": "membrane", "value": 11, "slip": true},
	}
	got := count([1 | plausible.slip(case.kind, case.role, desk.figure(case.value, "", ""))]) == 1
	got == case.slip
}

test_cause[name] if {
	some name, case in {
		"mil for mm": {"value": 40, "unit": "mm", "says": "mil was written in a column of mm"},
		"mm for mil": {"value": 0.0254, "unit": "mil", "says": "mm was written in a column of mil"},
		"mil for in": {"value": 1016, "unit": "in", "says": "mil was written in a column of inches"},
	}
	plausible.cause("thickness_mm", "membrane", desk.figure(case.value, "40", case.unit)).says == case.says
}

test_no_cause if not plausible.cause("thickness_mm", "membrane", desk.figure(300, "300", "mm"))
