package substitution.misquoted_test

import data.lib.swap_test
import data.substitution.misquoted

_found(more) := found if {
	found := misquoted.findings with input as swap_test.with_pairs([swap_test.pair([], more)])
}

test_misquoted if {
	some f in _found({"quoted": "FM-3"})
	f.message == "the submittal gives FM-3 as specified; the schedule specifies FM-1"
}

test_rightly_quoted_is_silent if count(_found({})) == 0

# The row may be taken for the wrong one.
test_uncertain_match_is_silent if count(_found({"quoted": "FM-3", "sure": false})) == 0
