package performance.joint_backing_test

import data.lib.bench_test as base
import data.lib.season_bench_test as bench
import data.performance.joint_backing

_bead := base.item("material", "JS-1", "polyurethane-sealant", "sealant", [])

_tape := base.item("remark", "tape", "bond-breaker-tape", "separator", [])

_told := bench.signal("joint_unbacked", "remark", "backer left out")

_found(items, more) := found if {
	row := bench.line_of(12, object.union({"role": "sealant", "items": items, "signals": [_told]}, more))
	found := joint_backing.findings with input as bench.document([row], [], [])
}

test_fires_in_full if {
	_found([_bead], {}) == {{
		"line": "W!12",
		"cells": ["C12", "M12"],
		"message": `JS-1 (polyurethane-sealant) has no backing in its joint ("backer left out")`,
	}}
}

test_silent[name] if {
	some name, case in {
		"tape behind": [[_bead, _tape], {}],
		"fillet": [[_bead], {"texts": {"remark": "fillet, backer left out"}}],
		"fixed frame": [[_bead], {"texts": {"place": "fixed frame", "remark": "backer left out"}}],
		"no sealant": [[_bead], {"role": "membrane"}],
		"nothing is said": [[_bead], {"signals": []}],
		"denied": [[_bead], {"signals": [bench.denial("joint_unbacked", "remark", "rod set")]}],
	}
	count(_found(case[0], case[1])) == 0
}
