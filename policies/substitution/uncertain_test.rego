package substitution.uncertain_test

import data.lib.swap_test
import data.substitution.uncertain

_found(swaps, more) := found if {
	found := uncertain.findings with input as swap_test.with_pairs([swap_test.pair(swaps, more)])
}

_swap := swap_test.a_swap(swap_test.asphaltic, swap_test.butyl, {})

test_close_call if {
	some f in _found([_swap], {"sure": false, "score": 0.7})
	f.message == "taken for W2, north wall of the specified schedule (70% alike), which is not certain"
}

test_little_alike if count(_found([], {"sure": false, "score": 0.45})) == 1

# Two rows that are the same in all that matters: whichever is meant, nothing changes.
test_close_call_without_a_swap_is_silent if count(_found([], {"sure": false, "score": 0.9})) == 0

test_sure_is_silent if count(_found([_swap], {})) == 0
