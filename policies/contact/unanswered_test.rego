package contact.unanswered_test

import data.contact.unanswered
import data.lib.season_bench_test as bench

_found(signals, more) := found if {
	line := bench.sheet(object.union({"signals": signals}, more))
	found := unanswered.findings with input as bench.document([line], [], [])
}

_missing := bench.signal("answer_missing", "remark", "compatibility unknown")

test_whole_finding if {
	_found([_missing], {}) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": concat(" ", [
			"FM-1 (rubberized-asphalt-membrane) goes with another maker's product,",
			`and the row says that no answer is there ("compatibility unknown")`,
		]),
	}}
}

test_silent[name] if {
	some name, case in {
		"nothing said": [[], {}],
		"on file": [[_missing, bench.signal("letter_on_file", "remark", "letter on file")], {}],
		"the other way round": [[object.union(_missing, {"no": true})], {}],
		"struck": [[_missing], {"struck": true}],
	}
	count(_found(case[0], case[1])) == 0
}
