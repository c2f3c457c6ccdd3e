package lib.finding_test

import data.lib.finding

_line := {"id": "Walls!12", "cells": {"material": "F12", "substrate": "E12"}}

_product := {"id": "PR-2", "cells": {"voc": "H4"}}

test_at if {
	finding.at(_line, ["material", "substrate", "sealant"], "both") == {
		"line": "Walls!12",
		"cells": ["E12", "F12"],
		"message": "both",
	}
}

test_cell_addresses_are_kept if {
	finding.at(_line, ["material", "H12", "F12"], "m").cells == ["F12", "H12"]
}

test_slots_may_be_a_set if {
	finding.at(_line, {"material"}, "m").cells == ["F12"]
}

test_row_without_cells if {
	finding.at({"id": "A!1"}, ["material"], "m") == {"line": "A!1", "cells": [], "message": "m"}
}

test_at_with if {
	other := {"id": "Walls!14", "cells": {"material": "F14"}}
	finding.at_with(_line, ["material"], "m", {
		"severity": "warning",
		"related": [finding.related(other, ["material"], "the layer under it")],
		"keys": {"days": 77},
	}) == {
		"line": "Walls!12",
		"cells": ["F12"],
		"message": "m",
		"severity": "warning",
		"related": [{"line": "Walls!14", "cells": ["F14"], "what": "the layer under it"}],
		"keys": {"days": 77},
	}
}

test_for_product if {
	finding.for_product(_product, ["voc"], "m", {}) == {"product": "PR-2", "cells": ["H4"], "message": "m"}
}

test_related_product if {
	finding.related_product(_product, ["voc"], "w") == {"product": "PR-2", "cells": ["H4"], "what": "w"}
}

test_for_address if {
	at := {"sheet": "Notes", "row": 3, "cell": "A3"}
	finding.for_address(at, "m", {}) == {"at": at, "cells": ["A3"], "message": "m"}
}

test_for_address_of_a_row if {
	at := {"sheet": "Notes", "row": 3}
	finding.for_address(at, "m", {}) == {"at": at, "cells": [], "message": "m"}
}

test_related_address if {
	at := {"sheet": "Notes", "row": 3, "cell": "A3"}
	finding.related_address(at, "w") == {"at": at, "cells": ["A3"], "what": "w"}
}

test_worst if {
	finding.worst({"note", "error", "warning"}) == "error"
	finding.worst(["note", "warning"]) == "warning"
	finding.worst({"note"}) == "note"
}
