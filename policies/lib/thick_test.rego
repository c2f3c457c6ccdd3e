package lib.thick_test

import data.lib.desk_test as desk
import data.lib.thick

test_own_beats_product if {
	row := desk.row(7, "FM-1", {"figures": {"thickness_mm": desk.figure(1.1, "1.1", "mm")}})
	product := desk.product("FM-1", 4, {"figures": {"thickness_mm": desk.figure(1, "1.0", "mm")}})
	thick.of(row).mm == 1.1 with input as desk.document([row], [product], [])
	thick.of(desk.row(8, "FM-1", {})).mm == 1 with input as desk.document([row], [product], [])
}

test_under if {
	thick.under(0.9, 1.016)
	not thick.under(1, 1.016)
}
