package lib.answer_test

import data.lib.answer

_rule := {
	"words": {"rule": "sequence-lap", "topic": "sequence", "reason": "why", "remedy": "do", "source": "practice"},
	"grades": {"": "error", "error": "error", "warning": "warning", "note": "note"},
}

_input := {
	"file": "a.xlsx",
	"lines": [{"id": "W!3", "sheet": "W", "row": 3, "mark": "W-1"}, {"id": "W!4", "sheet": "W", "row": 4, "mark": ""}],
	"products": [{"id": "P!2", "sheet": "P", "row": 2, "tag": "P-1"}],
}

test_line_with_related if {
	raw := {
		"line": "W!3", "cells": ["B3"], "message": "m", "severity": "warning", "reason": "",
		"related": [{"line": "W!4", "cells": [], "what": "over it"}],
	}
	answer.finding(_rule, raw) == {
		"rule": "sequence-lap", "topic": "sequence", "severity": "warning",
		"reason": "why", "remedy": "do", "source": "practice",
		"file": "a.xlsx", "line": "W!3", "sheet": "W", "row": 3, "mark": "W-1", "cells": ["B3"], "message": "m",
		"related": [{"line": "W!4", "sheet": "W", "row": 4, "mark": "", "cells": [], "what": "over it"}],
	} with input as _input
}

test_product_with_a_reason_of_its_own if {
	got := answer.finding(_rule, {"product": "P!2", "cells": [], "message": "m", "reason": "own"}) with input as _input
	object.subset(got, {"sheet": "P", "row": 2, "mark": "P-1", "reason": "own", "severity": "error", "related": []})
}

test_address if {
	at := {"sheet": "N", "row": 9, "cell": "A9"}
	got := answer.finding(_rule, {"at": at, "cells": ["A9"], "message": "m"}) with input as _input
	object.subset(got, {"sheet": "N", "row": 9, "mark": ""})
}

test_place_that_is_not_there if {
	not answer.finding(_rule, {"line": "W!9", "cells": [], "message": "m"}) with input as _input
}

test_line_turned_on_its_side if {
	line := {
		"id": "W!C4", "sheet": "W", "row": 4, "mark": "D1", "turned": true,
		"cells": {"mark": "C4", "material": "C6", "lap": "C10"},
	}
	rows := [answer.finding(_rule, {"line": "W!C4", "cells": cells, "message": "m"}).row |
		some cells in [["C10", "C6"], ["C6"], []]
	] with input as {"file": "a.xlsx", "lines": [line], "products": []}
	rows == [10, 6, 4]
}
