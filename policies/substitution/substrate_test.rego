package substitution.substrate_test

import data.lib.swap_test
import data.substitution.substrate

_found(lost, now) := found if {
	one := swap_test.a_swap(swap_test.asphaltic, now, {"lost": lost})
	found := substrate.findings with input as swap_test.document([one])
}

_lost(text, here) := {"text": text, "here": here, "at": {"sheet": "D", "row": 3, "cell": "L3"}}

test_lost_here if {
	some f in _found([_lost("concrete", true), _lost("XPS", false)], swap_test.other_asphaltic)
	f.severity == "warning"
	f.message == "ZM-1 in place of FM-1: its data does not list concrete, the substrate of this row"
}

test_here_is_told_once if {
	count(_found([_lost("concrete", true), _lost("XPS", false)], swap_test.other_asphaltic)) == 1
}

test_lost_elsewhere_is_a_note if {
	some f in _found([_lost("XPS", false)], swap_test.other_asphaltic)
	f.severity == "note"
	f.message == "ZM-1 in place of FM-1: its data leaves out XPS, which this row does not need"
}

test_nothing_lost_is_silent if count(_found([], swap_test.other_asphaltic)) == 0

test_no_data_is_silent if {
	unknown := swap_test.offer("QQ", ["mystery"], {"data": false})
	count(_found([_lost("concrete", true)], unknown)) == 0
}
