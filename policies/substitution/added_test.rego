package substitution.added_test

import data.lib.swap_test
import data.substitution.added

_found(line) := found if {
	found := added.findings with input as object.union(swap_test.document([]), {"comparison": {"added": [{"line": line}]}})
}

test_added if {
	some f in _found("W!12")
	f.message == "this row is not in the specified schedule"
}

test_struck_is_silent if count(_found("W!14")) == 0
