package substitution.no_data_test

import data.lib.swap_test
import data.substitution.no_data

_found(now, more) := found if {
	one := swap_test.a_swap(swap_test.asphaltic, now, more)
	found := no_data.findings with input as swap_test.document([one])
}

_unknown := swap_test.offer("ZM-Edge", [""], {"data": false, "family": ""})

test_unknown_product if {
	some f in _found(_unknown, {})
	f.message == "ZM-Edge in place of FM-1 is not in the product data, so nothing shows that it is equal"
}

test_known_product_is_silent if count(_found(swap_test.butyl, {})) == 0

# "40 mil butyl tape" is a kind of material, and is judged as such.
test_kind_of_material_is_silent if count(_found(object.union(swap_test.butyl, {"data": false}), {})) == 0

test_neighbor_is_silent if count(_found(_unknown, {"slot": "touches"})) == 0

# A remark may tell the data of what is offered; that it is offered at all tells none.
test_data_in_the_remark[remark] if {
	some remark, n in {
		"proposed: 14 perms, good for 90 days, 20 F and up": 0,
		"proposed by the sub, 90 days": 1,
		"14 perms, 90 days, 20 F and up": 1,
	}
	one := swap_test.a_swap(swap_test.asphaltic, _unknown, {})
	doc := swap_test.document([one])
	told := {"lines": [object.union(line, {"texts": {"remark": remark}}) | some line in doc.lines]}
	count(no_data.findings) == n with input as object.union(doc, told)
}
